using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.PocketLogs;

/// <summary>The facts of the pocket log's template: the words and the head. The rest is data for its script.</summary>
public sealed record PocketLogFacts(PaperHead Head) : PaperFacts(Head);
