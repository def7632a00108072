using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Files;

/// <summary>Why a file cannot be read, with the line and column where that shows.</summary>
public sealed record FileFault(string Check, Sentence Message, Sentence Help, int Line, int Column);
