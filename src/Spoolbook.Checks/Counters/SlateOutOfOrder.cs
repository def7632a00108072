using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Counters;

static class SlateOutOfOrder
{
    public static readonly RecordCheck Check = new("counter/slate-out-of-order", Level.Warning, Look, NeedsAll: true);

    static IEnumerable<Finding> Look(Context context)
    {
        var slates = Slates.Of(context.Production).ToImmutableArray();
        return [.. slates.Where(s => s.IsMisfit).Select(Misfit), .. Backwards(slates), .. Letters(context, slates)];
    }

    static Finding Misfit(Slates.Slated slated)
    {
        var (take, around) = (slated.Take, slated.Last!);
        return Check.At(slated.Roll, take, (take.Shot ?? take.Scene).Place, $"Take {take.Slate} stands between takes of {around.ShotName} and goes on with their numbers") with
        {
            Others = [new(around.Number.Place, $"take {around.Slate}"), new(slated.Next!.Number.Place, $"take {slated.Next.Slate}")],
            Help = $"If it is take {take.Number.Value} of {around.ShotName}, correct the scene or the letter. If not, it is the first of its shot, and is numbered 1.",
        };
    }

    static IEnumerable<Finding> Backwards(ImmutableArray<Slates.Slated> slates) =>
        from pair in Slates.CountedDown(slates)
        let last = pair.Before.Take
        let take = pair.After.Take
        select Check.At(pair.After.Roll, take, take.Number.Place, $"Take {take.Slate} stands after take {last.Slate} on the roll, and its number is the lower one") with
        {
            Others = [new(last.Number.Place, $"take {last.Slate}")],
            Help = "Write the takes in the order in which they were shot; if the order is right, correct the number that is wrong.",
        };

    // Where there is a shot list, what was left off it is not missed.
    static IEnumerable<Finding> Letters(Context context, ImmutableArray<Slates.Slated> slates) =>
        from scene in slates.GroupBy(s => s.Take.Scene.Value, StringComparer.Ordinal)
        let letters = scene.Select(s => s.Take.Shot?.Value).Distinct().ToArray()
        let listed = context.Production.Shots.Any(s => s.Scene.Value == scene.Key)
        from first in scene.Where(s => s.Take.Shot is not null).DistinctBy(s => s.Take.Shot!.Value)
        let letter = first.Take.Shot!
        let missing = listed ? [] : ShotLetters.MissingBefore(letter.Value, letters)
        where ShotLetters.ReadsAsFigure(letter.Value) || missing.Length > 0
        select Check.At(first.Roll, first.Take, letter.Place, missing.Length == 0
            ? $"The letter of shot {first.Take.ShotName} is read as a {(letter.Value is "I" or "i" ? 1 : 0)}, on the slate and on the can"
            : $"Shot {first.Take.ShotName} was taken, and there is no {string.Join(" and no ", missing.Select(m => scene.Key + m))}") with
        {
            Level = Level.Note,
            Help = missing.Length == 0
                ? "Letters go from H to J and from N to P. If the slate in the picture already says so, leave it and say it in a `note:` to the editor."
                : "If a shot was left off the sheets, write it down. If the letter was not used, accept it, and the editor need not look for it.",
        };
}
