using System.Collections.Immutable;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Entry.Takes;

/// <summary>Finds the take of the log for each row of a roll.</summary>
static class RowMatch
{
    /// <summary>The rows in the table's order; null, with what is wrong, where two rows are for the same take.</summary>
    /// <param name="lies">Where a take of the log is on the film.</param>
    public static ImmutableArray<MatchedRow>? Match(ImmutableArray<TakeRow> rows, Roll roll, Func<Take, Span> lies, RowParser parser)
    {
        var entries = Enumerable.Range(0, roll.Log.Length).Where(i => roll.Log[i] is Take).ToLookup(i => Slate((Take)roll.Log[i]));
        var met = new Dictionary<(string, string, int), List<TakeRow>>();
        var matched = ImmutableArray.CreateBuilder<MatchedRow>(rows.Length);
        var well = true;
        foreach (var row in rows)
        {
            var slate = (row.Slate.Scene, row.Slate.Shot, CellComparison.WholeOf(row[TakeColumn.Take]!)!.Value);
            if (!met.TryGetValue(slate, out var before))
            {
                met[slate] = before = [];
            }

            var known = entries[slate].ToList();
            if (before.Count > 0 && before.Count >= known.Count)
            {
                parser.Refuse(
                    row,
                    TakeColumn.Take,
                    $"{row.Said} of {row.Roll} is in the table twice: first at {before[0].Where(TakeColumn.Take)}.",
                    "Number one of them otherwise, or take the row out."
                );
                well = false;
            }

            matched.Add(new MatchedRow(row, before.Count < known.Count ? known[before.Count] : null, before.Count));
            before.Add(row);
        }

        return well ? WithRenamed(matched.ToImmutable(), roll, lies, parser) : null;
    }

    // A row with a new slate on exactly the film of a take without a row: the take was renamed.
    static ImmutableArray<MatchedRow> WithRenamed(ImmutableArray<MatchedRow> matched, Roll roll, Func<Take, Span> lies, RowParser parser)
    {
        var met = matched.Select(m => m.Entry).ToHashSet();
        var free = Enumerable.Range(0, roll.Log.Length).Where(i => roll.Log[i] is Take && !met.Contains(i)).ToList();
        var renamed =
            from row in matched
            where row.Entry is null
            let entry = free.Where(i => SaysItLies(row.Row, lies((Take)roll.Log[i]), parser)).ToList()
            where entry.Count == 1
            group (row, Entry: entry[0]) by entry[0] into same
            where same.Count() == 1
            select same.First();
        var found = renamed.ToDictionary(r => r.row, r => r.Entry);
        foreach (var (row, entry) in found)
        {
            parser.Note(
                row.Row,
                TakeColumn.Take,
                $"What the roll file calls {((Take)roll.Log[entry]).Slate} is {row.Row.Said} in the table."
            );
        }

        return [.. matched.Select(m => found.TryGetValue(m, out var entry) ? m with { Entry = entry } : m)];
    }

    static bool SaysItLies(TakeRow row, Span span, RowParser parser) =>
        parser.FilmOrNone(row, TakeColumn.FromFrame)?.Nearest == span.From
        && parser.FilmOrNone(row, TakeColumn.ToFrame)?.Nearest == span.To;

    static (string Scene, string Shot, int Number) Slate(Take take) =>
        (take.Scene.Value.Trim(), take.Shot?.Value.Trim() ?? "", take.Number.Value);
}
