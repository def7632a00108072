namespace Spoolbook.Entry.Logging;

/// <summary>The shooting day of the lines.</summary>
/// <param name="IsSaid">Whether a line gave it; otherwise it is today.</param>
public readonly record struct LineDay(DateOnly Day, bool IsSaid);
