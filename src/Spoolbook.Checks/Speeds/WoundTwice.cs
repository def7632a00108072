using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class WoundTwice
{
    public static readonly RecordCheck Check = new("speed/wound-twice", Level.Note, Look);

    // A spring is run down overnight, and wound again in the morning.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let ran = context.WalkOf(roll).Moments.Where(m => m.Entry is not (null or Remark)).ToArray()
        from pair in ran.Zip(ran.Skip(1))
        where pair is { First.Entry: Wind, Second.Entry: Wind } && pair.First.Day == pair.Second.Day
        select Check.At(roll, pair.Second.Entry!.Place, Sentence.Of("speed/wound-twice.message", ("roll", roll.Name.Value))) with
        {
            Others = [new Related(pair.First.Entry!.Place, Sentence.Of("speed/wound-twice.other"))],
            Advice = Sentence.Of("speed/wound-twice.help"),
        };
}
