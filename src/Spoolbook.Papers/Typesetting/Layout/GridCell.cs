using System.Xml.Linq;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>A cell in the grid.</summary>
sealed record GridCell(XElement Element, int Row, int Column, int ColumnSpan, int RowSpan);
