using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Intake.Takes;

/// <summary>A row and the take that it is about.</summary>
/// <param name="Entry">The take's place in the log; null where it is not in it.</param>
/// <param name="Occurrence">Which of the takes of that slate it is, if there are several; from 0.</param>
sealed record MatchedRow(TakeRow Row, int? Entry, int Occurrence);

/// <summary>Finds for each row of a roll the take of the log that it is about.</summary>
static class RowMatch
{
    /// <summary>The rows in the table's order; null, with what is wrong, where two rows are one take.</summary>
    public static ImmutableArray<MatchedRow>? Of(ImmutableArray<TakeRow> rows, Roll roll, RowDesk desk)
    {
        var entries = Enumerable.Range(0, roll.Log.Length).Where(i => roll.Log[i] is Take).ToLookup(i => Slate((Take)roll.Log[i]));
        var met = new Dictionary<(string, string, int), List<TakeRow>>();
        var matched = ImmutableArray.CreateBuilder<MatchedRow>(rows.Length);
        var well = true;
        foreach (var row in rows)
        {
            var slate = (row.Slate.Scene, row.Slate.Shot, CellWords.WholeOf(row[TakeColumn.Take]!)!.Value);
            if (!met.TryGetValue(slate, out var before))
            {
                met[slate] = before = [];
            }

            var known = entries[slate].ToList();
            if (before.Count > 0 && before.Count >= known.Count)
            {
                desk.Refuse(row, TakeColumn.Take, $"{row.Said} of {row.Roll} stands in the table twice: first at {before[0].Where(TakeColumn.Take)}.", "Number one of them otherwise, or take the row out.");
                well = false;
            }

            matched.Add(new MatchedRow(row, before.Count < known.Count ? known[before.Count] : null, before.Count));
            before.Add(row);
        }

        return well ? matched.ToImmutable() : null;
    }

    static (string Scene, string Shot, int Number) Slate(Take take) => (take.Scene.Value.Trim(), take.Shot?.Value.Trim() ?? "", take.Number.Value);
}
