using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.KitLists;

/// <summary>The facts of the kit list.</summary>
public sealed record KitListFacts(PaperHead Head, KitFacts Kit) : PaperFacts(Head);
