using System.Collections.Immutable;
using Spoolbook.Papers.Pdf.Drawing;

namespace Spoolbook.Papers.Pdf.Layout;

/// <summary>The head of a table, as furniture.</summary>
sealed record RepeatedHead(double Height, ImmutableArray<MarkGroup> Pieces);
