namespace Spoolbook.Shoot.Records;

/// <summary>Something to remember, with no film run.</summary>
public sealed record Remark(Place Place) : LogEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "note";
}
