using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
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
        return Check.At(
            roll,
            roll.ShortEndOf!.Place,
            thrown is null
                ? Sentence.Of("length/does-not-balance.message.nothing-left", ("name", name), ("from", from))
                : Sentence.Of("length/does-not-balance.message.thrown-away", ("name", name), ("from", from))
        ) with
        {
            Level = Level.Error,
            Others =
            [
                new(
                    thrown?.Place ?? parent.Roll.Unload!.Place,
                    thrown is null
                        ? Sentence.Of("length/does-not-balance.other.taken-out")
                        : Sentence.Of("length/does-not-balance.other.thrown-away")
                ),
            ],
            Figures =
            [
                new(Sentence.Of("length/does-not-balance.figure.loaded"), context.Write(parent.Strip.Loaded)),
                new(Sentence.Of("length/does-not-balance.figure.run-through"), context.Write(parent.Strip.Furthest)),
            ],
            Advice = thrown is null
                ? Sentence.Of("length/does-not-balance.help.nothing-left", ("from", from))
                : Sentence.Of("length/does-not-balance.help.thrown-away", ("from", from)),
        };
    }

    // One short end can be cut in two. A piece that nobody wrote down cannot be added up, and what a split left is in its can.
    static Finding? OutOfBalance(Context context, RollBook parent, Footage left, Roll[] cut)
    {
        var loaded = cut.Aggregate(Footage.Zero, (sum, r) => sum + (r.Length?.Value ?? Footage.Zero));
        var isSplit = context.Production.StockLog.Any(e => e is StockSplit && e.ShortEndOf?.Value == parent.Roll.Name.Value);
        if (cut.Any(r => r.Length is null) || (isSplit && loaded < left))
        {
            return null;
        }

        var off = loaded - left;
        if (Math.Abs(off.Frames) <= context.Of(Tolerances.ShortEndSlack).Frames)
        {
            return null;
        }

        var (last, from) = (cut[^1], parent.Roll.Name.Value);
        var names = Context.And(cut.Select(r => r.Name.Value));
        var amount = context.Write(new Footage(Math.Abs(off.Frames)));
        return Check.At(
            last,
            last.Length!.Place,
            Sentence.Of(
                (off > Footage.Zero, cut.Length == 1) switch
                {
                    (true, true) => "length/does-not-balance.message.one-longer",
                    (true, false) => "length/does-not-balance.message.together-longer",
                    (false, true) => "length/does-not-balance.message.one-missing",
                    (false, false) => "length/does-not-balance.message.together-missing",
                },
                ("rolls", names),
                ("from", from),
                ("amount", amount)
            )
        ) with
        {
            Others = [new(parent.Roll.Unload!.Place, Sentence.Of("length/does-not-balance.other.was-taken-out-here", ("from", from)))],
            Figures =
            [
                new(Sentence.Of("length/does-not-balance.figure.left-of", ("from", from)), context.Write(left)),
                new(
                    Sentence.Of(
                        cut.Length == 1 ? "length/does-not-balance.figure.written-here" : "length/does-not-balance.figure.written-together"
                    ),
                    context.Write(loaded)
                ),
                new(Sentence.Of("length/does-not-balance.figure.out-by"), amount),
            ],
            Advice = Sentence.Of(
                off > Footage.Zero ? "length/does-not-balance.help.longer" : "length/does-not-balance.help.missing",
                ("from", from),
                ("loaded", string.Join(", ", cut.Select(r => context.Write(r.Length!.Value)))),
                ("amount", amount)
            ),
        };
    }
}
