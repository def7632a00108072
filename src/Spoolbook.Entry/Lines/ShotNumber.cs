namespace Spoolbook.Entry.Lines;

/// <summary>A known shot, from the shot list or a take, with the highest take number so far; 0 for none.</summary>
public sealed record ShotNumber(string Scene, string? Shot, int Last)
{
    /// <summary>Scene and shot together, as papers print them: <c>7B</c>.</summary>
    public string Name => Scene + Shot;
}
