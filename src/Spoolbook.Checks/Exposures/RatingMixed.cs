using Spoolbook.Checks.Labs;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class RatingMixed
{
    public static readonly RecordCheck Check = new("exposure/rating-mixed", Level.Warning, Look, NeedsAll: true);

    static IEnumerable<Finding> Look(Context context)
    {
        var rolls = context.Production.Rolls.Where(r => !r.IsPractice && context.Production.LotOf(r) is { Index.Value: > 0 }).ToArray();
        return rolls.SelectMany(roll => WithinRoll(context, roll)).Concat(BetweenRolls(context, rolls));
    }

    // One finding for each roll: it is developed once.
    static IEnumerable<Finding> WithinRoll(Context context, Roll roll)
    {
        var stock = context.Production.LotOf(roll)!;
        var usual = Ratings.UsualOf(context, roll, stock);
        var takes = Ratings.Developed(roll).ToArray();
        var odd = takes.Where(t => Apart(context, Ratings.Of(context, roll, stock, t), usual!.Value)).ToArray();
        if (odd.Length == 0)
        {
            yield break;
        }

        var other = takes.First(t => !odd.Contains(t));
        var (first, index, others) = (odd[0], Ratings.IndexOf(roll, stock, odd[0]), Ratings.IndexOf(roll, stock, other));
        var off = Ratings.Of(context, roll, stock, first) - usual!.Value;
        yield return Check.At(
            roll,
            first,
            first.Rated?.Place ?? first.Scene.Place,
            Sentence.Of(
                odd.Length == 1 ? "exposure/rating-mixed.message.one-take" : "exposure/rating-mixed.message.takes",
                ("takes", Context.Count(odd.Length, "take")),
                ("first", first.Slate),
                ("rated", Context.Number(index)),
                ("roll", roll.Name.Value),
                ("rest", Context.Number(others)),
                ("off", Latitude.OverOrUnder(off))
            )
        ) with
        {
            Others =
            [
                new(
                    other.Rated?.Place ?? roll.Rated?.Place ?? stock.Index.Place,
                    Sentence.Of("exposure/rating-mixed.other.take-was-rated", ("other", other.Slate), ("others", Context.Number(others)))
                ),
            ],
            Figures =
            [
                new(Sentence.Plain(first.Slate), Context.Number(index)),
                new(Sentence.Plain(other.Slate), Context.Number(others)),
                new(Sentence.Of("exposure/rating-mixed.figure.apart-by"), Context.Stops(Math.Round(Math.Abs(off), 2))),
            ],
            Advice = Sentence.Of("exposure/rating-mixed.help.within-roll"),
        };
    }

    // One finding for each roll, against the first that it shares a set-up with.
    static IEnumerable<Finding> BetweenRolls(Context context, Roll[] rolls) =>
        from later in rolls
        let earlier = rolls.TakeWhile(r => r != later).FirstOrDefault(r => Differ(context, r, later))
        where earlier is not null
        select Between(context, earlier, later);

    static Finding Between(Context context, Roll earlier, Roll later)
    {
        // Flag the one that is rated farther from its stock.
        var (here, there) = (Usual(context, earlier), Usual(context, later));
        var (odd, other) = Math.Abs(here) > Math.Abs(there) ? (earlier, later) : (later, earlier);
        var off = Math.Abs(here) > Math.Abs(there) ? here - there : there - here;
        var (index, others) = (Index(context, odd), Index(context, other));
        return Check.At(
            odd,
            PlaceOf(odd),
            Sentence.Of(
                "exposure/rating-mixed.message.rolls",
                ("odd", odd.Name.Value),
                ("rated", Context.Number(index)),
                ("other", other.Name.Value),
                ("other-rated", Context.Number(others)),
                ("shots", string.Join(", ", SetUps.Shared(odd, other))),
                ("off", Latitude.OverOrUnder(off))
            )
        ) with
        {
            Others = [new(PlaceOf(other), Sentence.Of("exposure/rating-mixed.other.roll", ("other", other.Name.Value)))],
            Figures =
            [
                new(Sentence.Of("exposure/rating-mixed.figure.roll.other", ("other", other.Name.Value)), Context.Number(others)),
                new(Sentence.Of("exposure/rating-mixed.figure.roll.odd", ("odd", odd.Name.Value)), Context.Number(index)),
                new(Sentence.Of("exposure/rating-mixed.figure.apart-by"), Context.Stops(Math.Round(Math.Abs(off), 2))),
            ],
            Advice = Sentence.Of("exposure/rating-mixed.help.between-rolls"),
        };
    }

    static bool Differ(Context context, Roll a, Roll b) =>
        context.Production.LotOf(a)!.Stock.Value == context.Production.LotOf(b)!.Stock.Value
        && Orders.PushOf(a) == Orders.PushOf(b)
        && Ratings.UsualOf(context, a, context.Production.LotOf(a)!) is { } ofA
        && Ratings.UsualOf(context, b, context.Production.LotOf(b)!) is { } ofB
        && Apart(context, ofA, ofB)
        && !WantsPush(context, a, ofA)
        && !WantsPush(context, b, ofB)
        && SetUps.Shared(a, b).Length > 0;

    // A roll rated faster than it is pushed has another finding.
    static bool WantsPush(Context context, Roll roll, double slower) => -slower - Orders.PushOf(roll) > context.Of(Tolerances.RatedUp);

    static bool Apart(Context context, double a, double b) => Math.Abs(a - b) > context.Of(Tolerances.RatingMixed);

    static double Usual(Context context, Roll roll) => Ratings.UsualOf(context, roll, context.Production.LotOf(roll)!)!.Value;

    static int Index(Context context, Roll roll)
    {
        var stock = context.Production.LotOf(roll)!;
        var usual = Usual(context, roll);
        return Ratings.IndexOf(roll, stock, Ratings.Developed(roll).First(t => Ratings.Of(context, roll, stock, t) == usual));
    }

    static Place PlaceOf(Roll roll) =>
        (roll.Rated?.Place ?? roll.Takes.FirstOrDefault(t => t.Rated is not null)?.Rated!.Place) ?? roll.Name.Place;
}
