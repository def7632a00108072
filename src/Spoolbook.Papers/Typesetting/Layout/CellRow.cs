using System.Collections.Immutable;
using Spoolbook.Papers.Typesetting.Drawing;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Cells side by side as one slice: a table's row, a form's row, columns. Split only if no page can hold it.</summary>
sealed record CellRow(ImmutableArray<RowCell> Cells)
{
    public double MinimumHeight { get; init; }

    /// <summary>Backgrounds and rules, for a height.</summary>
    public Func<double, IEnumerable<PageMark>> Decoration { get; init; } = _ => [];

    public Slice ToSlice()
    {
        var height = Math.Max(MinimumHeight, Cells.Where(cell => !cell.Reaches).Select(cell => cell.Height).DefaultIfEmpty(0).Max());
        var pieces = ImmutableArray.CreateBuilder<MarkGroup>();
        pieces.Add(new MarkGroup(null, [.. Decoration(height)]));
        foreach (var cell in Cells)
        {
            if (cell.Element is { } element)
            {
                pieces.Add(new MarkGroup(element, []));
            }

            pieces.AddRange(Galley.Pack(cell.Content).Select(piece => piece.Shift(0, cell.PaddingTop)));
        }
        return new Slice(height, pieces.ToImmutable()) { Split = Split };
    }

    (Slice First, Slice Next)? Split(double height)
    {
        if (Cells.All(cell => cell.Content.Length < 2))
        {
            return null;
        }

        var counts = Cells.Select(cell => Fitting(cell, height)).ToList();
        // Nothing fits: put one slice of each cell on this page, however tall, so that the rest moves on.
        if (counts.All(count => count == 0))
        {
            counts = [.. Cells.Select(cell => Math.Min(1, cell.Content.Length))];
        }

        var first = Cells.Select((cell, i) => cell with { Content = cell.Content[..counts[i]] });
        var rest = Cells.Select((cell, i) => cell with { Content = cell.Content[counts[i]..] });
        return ((this with { Cells = [.. first] }).ToSlice(), (this with { Cells = [.. rest], MinimumHeight = 0 }).ToSlice());
    }

    static int Fitting(RowCell cell, double height)
    {
        var y = cell.PaddingTop + cell.PaddingBottom;
        for (var i = 0; i < cell.Content.Length; i++)
        {
            y += cell.Content[i].Height + (i > 0 ? cell.Content[i].SpaceBefore : 0);
            if (y > height)
            {
                return i;
            }
        }
        return cell.Content.Length;
    }
}
