namespace Spoolbook.Papers.Pictures;

/// <summary>A take's label.</summary>
/// <param name="Short">The text to use where the whole one is wider than the take.</param>
/// <param name="Number">The number of its line in the report, for a take without room for its slate; null to have the slate.</param>
/// <param name="At">The middle of the take.</param>
/// <param name="Room">The take's width.</param>
readonly record struct Label(string Text, string Short, string? Number, bool Bold, double At, double Room)
{
    /// <summary>What to write, the fullest first.</summary>
    public IEnumerable<string> Texts => Number is { } number ? [Text, Short, number] : [Text, Short];
}
