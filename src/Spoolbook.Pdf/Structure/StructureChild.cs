namespace Spoolbook.Pdf.Structure;

/// <summary>An element, a piece of a page's content (its number on the page) or an annotation (its object's number).</summary>
readonly record struct StructureChild(StructureElement? Element, int Page, int Number, ChildKind Kind);
