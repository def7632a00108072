namespace Spoolbook.Reading.Editing;

/// <summary>A file with its changes written in, or why they cannot be.</summary>
public sealed record EditedText(string? Text, EditFault? Fault);
