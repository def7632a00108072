using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class TotalsDiffer
{
    public static readonly RollCheck Check = new("length/totals-differ", Level.Warning, Round.Strips, Look);

    // More are no help.
    const int MostCauses = 3;

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (book.Roll is not { IsPractice: false, Totals: { } totals })
        {
            yield break;
        }

        var boxes = TotalsBox.Of(context, book, totals);
        var differing = boxes.Where(b => b.Differs).ToList();
        var count = totals.Takes is { } takes && takes.Value != book.Layers.Length ? takes : null;
        var names = differing.Select(b => b.Said).ToList();
        if (count is not null)
        {
            names.Add(Sentence.Of("length/totals-differ.value.takes"));
        }

        if (names.Count == 0)
        {
            yield break;
        }

        yield return Check.At(
            book.Roll,
            differing.Count > 0 ? differing[0].Sheet.Place : count!.Place,
            Sentence.Of("length/totals-differ.message", ("roll", book.Roll.Name.Value), ("boxes", Context.And(names)))
        ) with
        {
            Others = [.. Causes(context, book, boxes, count).Take(MostCauses)],
            Figures =
            [
                .. differing.Select(b => Figure(context, b)),
                .. count is null
                    ? []
                    : (Figure[])
                        [
                            new Figure(
                                Sentence.Of("length/totals-differ.value.takes"),
                                Sentence.Of("length/totals-differ.figure.takes", ("sheet", count.Value), ("log", book.Layers.Length))
                            ),
                        ],
            ],
            Advice = Sentence.Of(differing.Count == 0 ? "length/totals-differ.help.takes" : "length/totals-differ.help"),
        };
    }

    // One take more on the sheet than in the log explains the boxes too.
    static IEnumerable<Related> Causes(Context context, RollBook book, ImmutableArray<TotalsBox> boxes, Located<int>? count)
    {
        var ofLog = new TotalsCauses(context, book, boxes);
        return count is null ? new TotalsSlips(context, boxes).Find().Concat(ofLog.Find())
            : count.Value == book.Layers.Length + 1 ? ofLog.MissingTake(count.Place)
            : [];
    }

    static Figure Figure(Context context, TotalsBox box)
    {
        var isMore = box.More.Sign > 0;
        var apart = new Footage((long)(isMore ? box.More : Ratio.Zero - box.More).Round());
        return new Figure(
            box.Said,
            Sentence.Of(
                isMore ? "length/totals-differ.figure.more" : "length/totals-differ.figure.less",
                ("sheet", box.Write(context, new Footage((long)box.Sheet.Value.FramesIn(context.Production).Round()))),
                ("log", box.Write(context, box.Logged)),
                ("amount", box.Write(context, apart))
            )
        );
    }
}
