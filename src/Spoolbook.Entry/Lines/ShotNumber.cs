namespace Spoolbook.Entry.Lines;

/// <summary>A shot that is known, by the shot list or by a take, with the highest number of a take of it; 0 for none.</summary>
public sealed record ShotNumber(string Scene, string? Shot, int Last)
{
    /// <summary>Scene and shot together, as papers print them: <c>7B</c>.</summary>
    public string Name => Scene + Shot;
}
