namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A short end, or a piece of one, in one line.</summary>
/// <param name="Length">Film in it, less what was thrown away since.</param>
/// <param name="Where">In its can, loaded, or how it went.</param>
public sealed record ShortEndLine(string Name, string Lot, string Stock, string Length, string Where);
