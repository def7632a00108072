namespace Spoolbook.Pdf.Structure;

public enum HeadScope
{
    Column,
    Row,
}
