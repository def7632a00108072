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

    // Once for a roll: it is developed once.
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
        var takesWere = odd.Length == 1 ? $"Take {first.Slate} was" : $"{Context.Count(odd.Length, "take")} from {first.Slate} on were";
        yield return Check.At(roll, first, first.Rated?.Place ?? first.Scene.Place, $"{takesWere} rated {Context.Number(index)}, and the rest of roll {roll.Name.Value} {Context.Number(others)}: the lab develops a roll in one way, and {(odd.Length == 1 ? "it" : "they")} will be {Amount(off)}") with
        {
            Others = [new(other.Rated?.Place ?? roll.Rated?.Place ?? stock.Index.Place, $"take {other.Slate} was rated {Context.Number(others)}")],
            Figures = [new(first.Slate, Context.Number(index)), new(other.Slate, Context.Number(others)), new("apart by", Context.Stops(Math.Round(Math.Abs(off), 2)))],
            Help = "The lab cannot push a part of a roll: order what suits the takes that matter, and shoot the others again. If the meter was in truth left where it was, correct `rated:`.",
        };
    }

    // Once for a roll, against the first that it shares a set-up with.
    static IEnumerable<Finding> BetweenRolls(Context context, Roll[] rolls) =>
        from later in rolls
        let earlier = rolls.TakeWhile(r => r != later).FirstOrDefault(r => Differ(context, r, later))
        where earlier is not null
        select Between(context, earlier, later);

    static Finding Between(Context context, Roll earlier, Roll later)
    {
        // The one that is not rated as its stock says is the one to look at.
        var (here, there) = (Usual(context, earlier), Usual(context, later));
        var (odd, other) = Math.Abs(here) > Math.Abs(there) ? (earlier, later) : (later, earlier);
        var off = Math.Abs(here) > Math.Abs(there) ? here - there : there - here;
        var (index, others) = (Index(context, odd), Index(context, other));
        return Check.At(odd, PlaceOf(odd), $"Roll {odd.Name.Value} is rated {Context.Number(index)} and roll {other.Name.Value} {Context.Number(others)}, both developed alike, and both hold takes of {string.Join(", ", SetUps.Shared(odd, other))}: those on {odd.Name.Value} will be {Amount(off)}") with
        {
            Others = [new(PlaceOf(other), $"roll {other.Name.Value}")],
            Figures = [new($"roll {other.Name.Value}", Context.Number(others)), new($"roll {odd.Name.Value}", Context.Number(index)), new("apart by", Context.Stops(Math.Round(Math.Abs(off), 2)))],
            Help = "Rate one set-up in one way. If it was, correct `rated:`; if not, tell whoever grades it.",
        };
    }

    static bool Differ(Context context, Roll a, Roll b) =>
        context.Production.LotOf(a)!.Stock.Value == context.Production.LotOf(b)!.Stock.Value
        && Orders.PushOf(a) == Orders.PushOf(b)
        && Ratings.UsualOf(context, a, context.Production.LotOf(a)!) is { } ofA
        && Ratings.UsualOf(context, b, context.Production.LotOf(b)!) is { } ofB
        && Apart(context, ofA, ofB)
        && !WantsPush(context, a, ofA) && !WantsPush(context, b, ofB)
        && SetUps.Shared(a, b).Length > 0;

    // A roll rated faster than it is pushed has a finding of its own.
    static bool WantsPush(Context context, Roll roll, double slower) => -slower - Orders.PushOf(roll) > context.Of(Tolerances.RatedUp);

    static bool Apart(Context context, double a, double b) => Math.Abs(a - b) > context.Of(Tolerances.RatingMixed);

    static double Usual(Context context, Roll roll) => Ratings.UsualOf(context, roll, context.Production.LotOf(roll)!)!.Value;

    static int Index(Context context, Roll roll)
    {
        var stock = context.Production.LotOf(roll)!;
        var usual = Usual(context, roll);
        return Ratings.IndexOf(roll, stock, Ratings.Developed(roll).First(t => Ratings.Of(context, roll, stock, t) == usual));
    }

    static Place PlaceOf(Roll roll) => (roll.Rated?.Place ?? roll.Takes.FirstOrDefault(t => t.Rated is not null)?.Rated!.Place) ?? roll.Name.Place;

    static string Amount(double off) => $"{Context.Stops(Math.Round(Math.Abs(off), 2))} {(off < 0 ? "under" : "over")}";
}
