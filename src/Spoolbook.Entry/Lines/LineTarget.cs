namespace Spoolbook.Entry.Lines;

/// <summary>Which entry a line amends or strikes.</summary>
/// <param name="Slate">The take's slate, as papers print it: <c>7B/1</c>; null for the last entry of the log.</param>
public sealed record LineTarget(string? Slate)
{
    public bool IsLast => Slate is null;
}
