namespace Spoolbook.Pdf.Structure;

enum ChildKind
{
    Element,
    Content,
    Annotation,
}
