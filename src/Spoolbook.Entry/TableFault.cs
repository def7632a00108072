namespace Spoolbook.Entry;

/// <summary>What makes a table unreadable. Thrown and caught only in this room.</summary>
sealed class TableFault(Objection objection) : Exception(objection.Message)
{
    public TableFault(string where, string message, string help)
        : this(new Objection(where, message, help)) { }

    public Objection Objection { get; } = objection;
}
