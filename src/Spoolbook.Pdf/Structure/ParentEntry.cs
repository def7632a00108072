namespace Spoolbook.Pdf.Structure;

/// <summary>
/// The owner of a key of the parent tree: one element for a link, or an element for each content number of a page.
/// </summary>
sealed record ParentEntry(StructureElement? Single, IReadOnlyList<StructureElement>? ByContent);
