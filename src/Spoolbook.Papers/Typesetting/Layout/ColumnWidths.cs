namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Divides a table's width among its columns by their contents.</summary>
static class ColumnWidths
{
    // A column of figures that is much wider than its figures moves them away from their neighbours.
    const double NarrowShare = 0.35;

    public static double[] Share(IReadOnlyList<ColumnNeed> needs, double width)
    {
        var widths = new double[needs.Count];
        var free = width;
        var open = new List<int>();
        for (var i = 0; i < needs.Count; i++)
        {
            if (needs[i].Given is { } given)
            {
                widths[i] = Math.Max(given, needs[i].Word);
                free -= widths[i];
            }
            else
            {
                open.Add(i);
            }
        }
        var rest = open.Any(i => needs[i].Rest);
        double words = open.Sum(i => needs[i].Word),
            lines = open.Sum(i => needs[i].Line);
        foreach (var i in open)
        {
            var need = needs[i];
            if (lines <= free)
            {
                widths[i] = need.Line + (free - lines) * Weight(need, rest) / Math.Max(1e-9, open.Sum(k => Weight(needs[k], rest)));
            }
            else if (words <= free)
            {
                widths[i] = need.Word + (free - words) * (need.Line - need.Word) / Math.Max(1e-9, lines - words);
            }
            else
            {
                widths[i] = need.Word;
            }
        }

        var total = widths.Sum();
        if (total > width + 0.01)
        {
            return Trim(widths, width);
        }

        return open.Count == 0 && total > 0 ? [.. widths.Select(w => w * width / total)] : widths;
    }

    /// <summary>Where the words are too wide together, the widest columns shrink first, to one width, and their words are broken.</summary>
    static double[] Trim(double[] widths, double width)
    {
        var left = width;
        var columns = widths.Length;
        foreach (var narrow in widths.Order())
        {
            if (narrow * columns > left)
            {
                break;
            }

            left -= narrow;
            columns--;
        }
        var widest = columns == 0 ? width : left / columns;
        return [.. widths.Select(w => Math.Min(w, widest))];
    }

    static double Weight(ColumnNeed need, bool rest) => rest && !need.Rest ? 0 : Math.Max(1, need.Line) * (need.Narrow ? NarrowShare : 1);
}
