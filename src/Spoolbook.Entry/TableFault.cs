namespace Spoolbook.Entry;

/// <summary>What keeps a table from being read at all. Thrown and caught within this room alone.</summary>
sealed class TableFault(Objection objection) : Exception(objection.Message)
{
    public TableFault(string where, string message, string help)
        : this(new Objection(where, message, help)) { }

    public Objection Objection { get; } = objection;
}
