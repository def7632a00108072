namespace Spoolbook.Entry;

/// <summary>A fault that makes a table unreadable. Only this room throws and catches it.</summary>
sealed class TableFault(Objection objection) : Exception(objection.Message)
{
    public TableFault(string where, string message, string help)
        : this(new Objection(where, message, help)) { }

    public Objection Objection { get; } = objection;
}
