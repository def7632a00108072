using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class OverUnwantedTake
{
    public static readonly RollCheck Check = new("counter/over-unwanted-take", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from wanted in book.Layers
        where IsWanted(wanted) && wanted.IsLit
        let unwanted = book
            .Layers.Where(l => !IsWanted(l) && l.IsLit && l.Span.Overlaps(wanted.Span) && !HasItsOwnFinding(context, book, wanted, l))
            .ToList()
        where unwanted.Count > 0
        select Find(context, book, wanted, unwanted);

    static Finding Find(Context context, RollBook book, Layer wanted, List<Layer> unwanted)
    {
        var shared = book
            .Strip.SegmentsOver(wanted.Span)
            .Where(s => s.Layers.Any(unwanted.Contains))
            .Sum(s => s.Span.Intersect(wanted.Span).Length.Frames);
        var length = context.Write(new Footage(shared));
        return Check.At(
            book.Roll,
            wanted.Take,
            wanted.Take.Mark.Place,
            Sentence.Of(
                "counter/over-unwanted-take.message",
                ("shared", length),
                ("take", wanted.Take.Slate),
                ("unwanted", Context.And(unwanted.Select(l => l.Take.Slate)))
            )
        ) with
        {
            Others =
            [
                .. unwanted.Select(l => new Related(
                    l.Take.Mark.Place,
                    Sentence.Of(
                        l.Take.Mark.Value == Mark.Test
                            ? "counter/over-unwanted-take.other.test"
                            : "counter/over-unwanted-take.other.no-good",
                        ("take", l.Take.Slate)
                    )
                )),
            ],
            Figures =
            [
                new Figure(Sentence.Of("counter/over-unwanted-take.figure.take"), context.Write(wanted.Span.Length)),
                new Figure(Sentence.Of("counter/over-unwanted-take.figure.shared"), length),
            ],
            Advice = Sentence.Of("counter/over-unwanted-take.help"),
        };
    }

    static bool HasItsOwnFinding(Context context, RollBook book, Layer one, Layer other) =>
        PassOutside.IsOutside(context, book, one, other) || PassOutside.IsOutside(context, book, other, one);

    static bool IsWanted(Layer layer) => layer.Take.Mark.Value is Mark.Good or Mark.Hold;
}
