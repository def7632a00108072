using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

/// <summary>What came of reading a line: what it says, or the one finding that refuses it. An empty line is neither.</summary>
public sealed record LineRead(SaidLine? Said, Finding? Refused);
