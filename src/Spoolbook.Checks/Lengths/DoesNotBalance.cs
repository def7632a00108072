using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class DoesNotBalance
{
    public static readonly BookCheck Check = new("length/does-not-balance", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context, Books books) =>
        from cut in books.Production.Rolls.Where(r => r.ShortEndOf is not null).GroupBy(r => r.ShortEndOf!.Value, StringComparer.Ordinal)
        let parent = books.Shoot.Rolls.FirstOrDefault(r => r.Roll.Name.Value == cut.Key)
        where parent is { Roll: { IsPractice: false, Unload: not null } }
        let left = parent.Tally.ShortEnd
        let finding = left == Footage.Zero ? Impossible(context, parent, cut.First()) : OutOfBalance(context, parent, left, [.. cut])
        where finding is not null
        select finding;

    static Finding Impossible(Context context, RollBook parent, Roll roll)
    {
        var (name, from) = (roll.Name.Value, parent.Roll.Name.Value);
        var thrown = parent.Roll.Unload!.ShortEnd is { Value: Remainder.Thrown } said && !parent.Strip.Left.IsEmpty ? said : null;
        return Check.At(roll, roll.ShortEndOf!.Place, thrown is null
            ? $"Roll {name} is said to be the short end of {from}, and by its sheet nothing was left of {from}"
            : $"Roll {name} is said to be the short end of {from}, and by its sheet what was left of {from} was thrown away") with
        {
            Level = Level.Error,
            Others = [new(thrown?.Place ?? parent.Roll.Unload!.Place, thrown is null ? "taken out" : "thrown away")],
            Figures = [new("loaded", context.Write(parent.Strip.Loaded)), new("run through", context.Write(parent.Strip.Furthest))],
            Help = thrown is null
                ? $"See whether it was cut from another roll. If not, correct the last position on {from}: film that was cut off was not run off."
                : $"If it was kept, write `short-end: kept` on {from}; if not, correct `short-end-of:`.",
        };
    }

    // One short end can be cut in two; what is not written down nobody can add up.
    static Finding? OutOfBalance(Context context, RollBook parent, Footage left, Roll[] cut)
    {
        if (cut.Any(r => r.Length is null))
        {
            return null;
        }

        var loaded = cut.Aggregate(Footage.Zero, (sum, r) => sum + r.Length!.Value);
        var off = loaded - left;
        if (Math.Abs(off.Frames) <= context.Of(Tolerances.ShortEndSlack).Frames)
        {
            return null;
        }

        var (last, from) = (cut[^1], parent.Roll.Name.Value);
        var names = string.Join(" and ", cut.Select(r => r.Name.Value));
        var amount = context.Write(new Footage(Math.Abs(off.Frames)));
        return Check.At(last, last.Length!.Place, off > Footage.Zero
            ? $"{names} {(cut.Length == 1 ? "was" : "were")} cut from {from}, and {(cut.Length == 1 ? "is" : "are together")} {amount} longer than what was left of it"
            : $"{names} {(cut.Length == 1 ? "was" : "were")} cut from {from}, and {amount} of what was left of it are missing") with
        {
            Others = [new(parent.Roll.Unload!.Place, $"{from} was taken out here")],
            Figures = [new($"left of {from}", context.Write(left)), new(cut.Length == 1 ? "written here" : "written together", context.Write(loaded)), new("out by", amount)],
            Help = $"See which is wrong: the last position on {from}, its tail, or this length. "
                + (off > Footage.Zero ? $"If {from} held more than its can says, write what it held: `length: …`." : "If a piece was cut off for something else, accept it and say for what."),
        };
    }
}
