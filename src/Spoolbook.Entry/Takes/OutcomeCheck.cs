using System.Collections.Immutable;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Entry.Takes;

/// <summary>Compares every row with what became of its take, so that nothing in a row gets lost.</summary>
static class OutcomeCheck
{
    public static ImmutableArray<Objection> Against(ImportPlan plan, ShootBook after)
    {
        var objections = new Objections();
        var parser = new RowParser(after.Production, plan.Heads!, objections, new Objections());
        foreach (var outcome in plan.Outcomes)
        {
            if (LayerOf(outcome, after) is { } layer)
            {
                Check(outcome, layer, parser);
            }
            else
            {
                parser.Refuse(
                    outcome.Row,
                    TakeColumn.Take,
                    $"{outcome.Row.Said} cannot be read back from the roll file.",
                    "Write the take into the roll's file by hand."
                );
            }
        }

        return objections.All;
    }

    static Layer? LayerOf(RowOutcome outcome, ShootBook after) =>
        after
            .Rolls.FirstOrDefault(r => r.Roll.Name.Value == outcome.Row.Roll)
            ?.Layers.Where(l =>
                CellComparison.Same(outcome.Row.Slate.Scene, l.Take.Scene.Value)
                && CellComparison.Same(outcome.Row.Slate.Shot, l.Take.Shot?.Value)
                && CellComparison.WholeOf(outcome.Row[TakeColumn.Take]!) == l.Take.Number.Value
            )
            .ElementAtOrDefault(outcome.Occurrence);

    static void Check(RowOutcome outcome, Layer layer, RowParser parser)
    {
        var (row, take) = (outcome.Row, layer.Take);
        if (row[TakeColumn.Pass] is { } pass && CellComparison.NumberOf(pass) != layer.Pass)
        {
            parser.Refuse(
                row,
                TakeColumn.Pass,
                $"{row.Said} lies in pass {layer.Pass}, by the rewinds in the log.",
                "Write the rewind into the roll's file first: a pass begins with it."
            );
        }

        if (row[TakeColumn.Body] is { } body && !CellComparison.Same(body.Text, layer.Body))
        {
            parser.Refuse(
                row,
                TakeColumn.Body,
                $"{row.Said} lies on a roll that was in the body '{layer.Body}' then.",
                "Change it in the roll's file: at its head, or where the roll was rethreaded."
            );
        }

        if (row[TakeColumn.Day] is { } day && CellComparison.DayOf(day) != layer.On)
        {
            parser.Refuse(row, TakeColumn.Day, $"{row.Said} would be of {layer.On:yyyy-MM-dd}.", "Write the day into the roll's file.");
        }

        if (row[TakeColumn.Speed] is { } speed && !CellComparison.Same(speed, take.Speed))
        {
            parser.Refuse(row, TakeColumn.Speed, $"{row.Said} would run at {take.Speed}.", "Write the speed into the roll's file.");
        }

        if (outcome.From <= outcome.To && (layer.Written.From, layer.Written.To) != (outcome.From, outcome.To))
        {
            parser.Refuse(
                row,
                layer.Written.From == outcome.From ? TakeColumn.ToFrame : TakeColumn.FromFrame,
                $"{row.Said} would move on the film: from frame {layer.Written.From.Frames} to {layer.Written.To.Frames}.",
                "See where the take before it ends, and whether a rewind or a run-off is between them in the roll's file."
            );
        }

        Words(row, TakeColumn.Lens, take.Lens?.Value, parser);
        Words(row, TakeColumn.Filter, string.Join(" + ", take.Filters.Select(f => f.Value)), parser);
        Words(row, TakeColumn.Remarks, take.Note?.Value, parser);
    }

    static void Words(TakeRow row, TakeColumn column, string? value, RowParser parser)
    {
        if (
            row[column] is { } cell
            && cell.Text.Trim() != CellComparison.Nothing
            && !CellComparison.Same(cell.Text, value)
            && (column != TakeColumn.Filter || Plain(cell.Text) != Plain(value ?? ""))
        )
        {
            parser.Refuse(row, column, $"{row.Said} would say '{value}' here.", "Write it into the roll's file.");
        }
    }

    static string Plain(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
