namespace Spoolbook.Pdf.Structure;

/// <summary>Whose a key of the parent tree is: one element (an annotation's), or an element for each content number of a page.</summary>
sealed record ParentEntry(StructureElement? Single, IReadOnlyList<StructureElement>? ByContent);
