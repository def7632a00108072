using System.Xml.Linq;

namespace Spoolbook.Papers.Pdf.Layout;

sealed record GridRow(XElement Element, RowKind Kind, IReadOnlyList<GridCell> Cells);
