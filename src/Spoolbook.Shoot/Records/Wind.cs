namespace Spoolbook.Shoot.Records;

/// <summary>The spring was wound to the full.</summary>
public sealed record Wind(Place Place) : LogEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "wind";
}
