namespace Spoolbook.Reading.Editing;

/// <summary>A file with its changes, or why they cannot be written.</summary>
public sealed record EditedText(string? Text, EditFault? Fault);
