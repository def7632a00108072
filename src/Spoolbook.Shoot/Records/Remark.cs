namespace Spoolbook.Shoot.Records;

/// <summary>A note in the log, with no film run.</summary>
public sealed record Remark(Place Place) : LogEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "note";
}
