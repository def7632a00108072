using System.Collections.Immutable;
using Spoolbook.Papers.Typesetting.Drawing;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>The head of a table, as furniture.</summary>
sealed record RepeatedHead(double Height, ImmutableArray<MarkGroup> Pieces);
