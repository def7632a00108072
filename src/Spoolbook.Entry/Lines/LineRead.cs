using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

/// <summary>A line that was read: what it says, or the one finding that refuses it. An empty line has neither.</summary>
public sealed record LineRead(SaidLine? Said, Finding? Refused);
