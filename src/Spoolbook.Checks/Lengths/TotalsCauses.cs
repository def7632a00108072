using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

/// <summary>The takes that one slip of the pen in the log would make the boxes of the sheet right.</summary>
sealed class TotalsCauses(Context context, RollBook book, ImmutableArray<TotalsBox> boxes)
{
    // More names are no help.
    const int Most = 3;

    static readonly ImmutableArray<(Mark Mark, string Name)> _marks =
    [
        (Mark.Good, "length/totals-differ.value.good"),
        (Mark.Hold, "length/totals-differ.value.hold"),
        (Mark.NoGood, "length/totals-differ.value.no-good"),
        (Mark.Test, "length/totals-differ.value.test"),
    ];

    /// <summary>Takes with another mark first, then ends that are a foot out.</summary>
    public ImmutableArray<Related> Find() => [.. Marks().Concat(Ends()).Take(Most)];

    IEnumerable<Related> Marks() =>
        from layer in book.Layers
        let length = OwnedBy(layer)
        where length > Footage.Zero
        from other in _marks
        where other.Mark != layer.Take.Mark.Value
        where IsExplainedBy(AccountOf(layer.Take.Mark.Value), AccountOf(other.Mark), length.Frames)
        select new Related(
            layer.Take.Mark.Place,
            Sentence.Of(
                "length/totals-differ.other.mark",
                ("take", layer.Take.Slate),
                ("length", context.Write(length)),
                ("mark", Sentence.Of(other.Name))
            )
        );

    IEnumerable<Related> Ends()
    {
        var foot = (long)context.Production.Gauge.FramesPerFoot.Round();
        foreach (var (first, second) in book.Strip.Segments.Zip(book.Strip.Segments.Skip(1)))
        {
            if (first.Owner is not { } owner || owner.Span.To != first.Span.To)
            {
                continue;
            }

            foreach (var frames in (long[])[foot, -foot])
            {
                var fits = first.Span.Length.Frames + frames > 0 && second.Span.Length.Frames - frames > 0;
                if (fits && IsExplainedBy(second.Account, first.Account, frames))
                {
                    yield return new Related(
                        owner.Take.To.Place,
                        Sentence.Of(
                            frames > 0 ? "length/totals-differ.other.later" : "length/totals-differ.other.earlier",
                            ("take", owner.Take.Slate),
                            ("amount", context.Write(new Footage(foot)))
                        )
                    );
                }
            }
        }
    }

    // So many frames moved from one account to another leave no box that differs.
    bool IsExplainedBy(Account from, Account to, Ratio frames) =>
        from != to
        && boxes.All(b =>
            b.Explains(
                b.Account == to ? frames
                : b.Account == from ? Ratio.Zero - frames
                : Ratio.Zero
            )
        );

    Footage OwnedBy(Layer layer) =>
        new(book.Strip.SegmentsOver(layer.Span).Where(s => ReferenceEquals(s.Owner, layer)).Sum(s => s.Span.Length.Frames));

    static Account AccountOf(Mark mark) =>
        mark switch
        {
            Mark.Good => Account.Good,
            Mark.Hold => Account.Hold,
            Mark.NoGood => Account.NoGood,
            _ => Account.Waste,
        };
}
