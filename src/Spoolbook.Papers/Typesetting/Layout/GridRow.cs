using System.Xml.Linq;

namespace Spoolbook.Papers.Typesetting.Layout;

sealed record GridRow(XElement Element, RowKind Kind, IReadOnlyList<GridCell> Cells);
