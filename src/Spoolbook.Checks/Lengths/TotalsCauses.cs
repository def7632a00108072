using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

/// <summary>What in the log, put right, would make all boxes of the sheet right: a mark, the head, an end, a take left out.</summary>
sealed class TotalsCauses(Context context, RollBook book, ImmutableArray<TotalsBox> boxes)
{
    static readonly ImmutableArray<(Mark Mark, string Name)> _marks =
    [
        (Mark.Good, "length/totals-differ.value.good"),
        (Mark.Hold, "length/totals-differ.value.hold"),
        (Mark.NoGood, "length/totals-differ.value.no-good"),
        (Mark.Test, "length/totals-differ.value.test"),
    ];

    /// <summary>Takes with another mark first, then the head, then ends that are a foot or a metre out.</summary>
    public IEnumerable<Related> Find() => Marks().Concat(Head()).Concat(Ends());

    /// <summary>The take that the sheet has and the log has not.</summary>
    public IEnumerable<Related> MissingTake(Place counted)
    {
        var (more, less) = (
            boxes.Where(b => b is { Differs: true, More.Sign: > 0 }),
            boxes.Where(b => b is { Differs: true, More.Sign: < 0 })
        );
        var fits =
            more.ToArray() is [{ Account: { } to } box]
            && less.ToArray() is [{ Account: { } from }]
            && IsExplainedBy(from, to, box.More)
            && to is not Account.ShortEnd
                ? box
                : null;
        var gaps = NumbersLeftOut().ToArray();
        return gaps is [var gap]
                ?
                [
                    new Related(
                        gap.After.Number.Place,
                        fits is null
                            ? Sentence.Of("length/totals-differ.other.gap", ("take", gap.Slate), ("after", gap.After.Slate))
                            : Sentence.Of(
                                "length/totals-differ.other.gap.length",
                                ("take", gap.Slate),
                                ("after", gap.After.Slate),
                                ("length", Long(fits)),
                                ("box", fits.Said)
                            )
                    ),
                ]
            : fits is not null
                ? [new Related(counted, Sentence.Of("length/totals-differ.other.missing", ("length", Long(fits)), ("box", fits.Said)))]
            : [];
    }

    string Long(TotalsBox box) => box.Write(context, new Footage((long)box.More.Round()));

    // A number of a shot that is on no roll, between two takes of this one.
    IEnumerable<(string Slate, Take After)> NumbersLeftOut() =>
        from shot in book.Layers.Select(l => l.Take).GroupBy(t => t.ShotName)
        let takes = shot.OrderBy(t => t.Number.Value).ToArray()
        from pair in takes.Zip(takes.Skip(1))
        where pair.Second.Number.Value == pair.First.Number.Value + 2
        let slate = pair.First.Slate[..(pair.First.Slate.LastIndexOf('/') + 1)] + Context.Number(pair.First.Number.Value + 1)
        where context.Production.Rolls.All(r => r.Takes.All(t => t.Slate != slate))
        select (slate, pair.First);

    IEnumerable<Related> Marks() =>
        from layer in book.Layers
        let length = OwnedBy(layer)
        where length > Footage.Zero
        from other in _marks
        where other.Mark != layer.Take.Mark.Value
        where IsExplainedBy(AccountOf(layer.Take.Mark.Value), AccountOf(other.Mark), length.Frames)
        group (layer.Take, Length: length) by other into takes
        let first = takes.First()
        select new Related(
            first.Take.Mark.Place,
            takes.Skip(1).Any()
                ? Sentence.Of(
                    "length/totals-differ.other.mark.one-of",
                    ("takes", Names(takes.Select(t => t.Take))),
                    ("mark", Sentence.Of(takes.Key.Name))
                )
                : Sentence.Of(
                    "length/totals-differ.other.mark",
                    ("take", first.Take.Slate),
                    ("length", context.Write(first.Length)),
                    ("mark", Sentence.Of(takes.Key.Name))
                )
        );

    // What is more in the waste and less in the first take was lost at the head. Whole feet first: so it is read off the counter.
    IEnumerable<Related> Head()
    {
        if (
            book.Roll.Load.Head is { } head
            && book.Strip.Segments is [_, var second, ..]
            && boxes.FirstOrDefault(b => b is { Differs: true, Account: Account.Waste }) is { } waste
            && new[] { InFeet(waste.More), (long)waste.More.Round() }.Where(f => Fits(head.Value, second, f)).Take(1).ToArray()
                is [var frames]
        )
        {
            yield return new Related(
                head.Place,
                Sentence.Of(
                    "length/totals-differ.other.head",
                    ("head", context.Write(head.Value)),
                    ("right", context.Write(new Footage(head.Value.Frames + frames)))
                )
            );
        }
    }

    bool Fits(Footage head, Segment first, long frames) =>
        frames != 0
        && head.Frames + frames >= 0
        && new Footage(head.Frames + frames) <= context.Of(Tolerances.EndsMost)
        && first.Span.Length.Frames > frames
        && IsExplainedBy(first.Account, Account.Waste, frames);

    long InFeet(Ratio frames)
    {
        var foot = context.Production.Gauge.FramesPerFoot;
        return (long)(new Ratio((frames / foot).Round(), 1) * foot).Round();
    }

    IEnumerable<Related> Ends()
    {
        var (gauge, inMetres) = (context.Production.Gauge, context.Production.Units == LengthUnit.Metres);
        var step = (long)(inMetres ? gauge.FramesPerMetre : gauge.FramesPerFoot).Round();
        foreach (var frames in (long[])[step, -step])
        {
            var takes = EndsThatFit(frames).ToArray();
            if (takes is [var first, ..])
            {
                yield return new Related(
                    first.To.Place,
                    Sentence.Of(
                        frames > 0 ? "length/totals-differ.other.later" : "length/totals-differ.other.earlier",
                        ("takes", takes.Length == 1 ? Sentence.Plain(first.Slate) : OneOf(takes)),
                        ("amount", context.Write(new Footage(step)))
                    )
                );
            }
        }
    }

    IEnumerable<Take> EndsThatFit(long frames) =>
        from pair in book.Strip.Segments.Zip(book.Strip.Segments.Skip(1))
        let owner = pair.First.Owner
        where owner is not null && owner.Span.To == pair.First.Span.To
        where pair.First.Span.Length.Frames + frames > 0 && pair.Second.Span.Length.Frames - frames > 0
        where IsExplainedBy(pair.Second.Account, pair.First.Account, frames)
        select owner.Take;

    static Sentence OneOf(IEnumerable<Take> takes) => Sentence.Of("length/totals-differ.other.one-of", ("takes", Names(takes)));

    static string Names(IEnumerable<Take> takes) => string.Join(", ", takes.Select(t => t.Slate));

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
