using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Files;

/// <summary>Why a file cannot be read, and at which line and column.</summary>
public sealed record FileFault(string Check, Sentence Message, Sentence Help, int Line, int Column);
