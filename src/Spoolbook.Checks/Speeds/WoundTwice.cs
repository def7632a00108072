using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class WoundTwice
{
    public static readonly RecordCheck Check = new("speed/wound-twice", Level.Note, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let ran = roll.Log.Where(e => e is not Remark).ToArray()
        from pair in ran.Zip(ran.Skip(1))
        where pair is { First: Wind, Second: Wind } && IsSameDay(context, roll, pair.First, pair.Second)
        select Check.At(roll, pair.Second.Place, Sentence.Of("speed/wound-twice.message", ("roll", roll.Name.Value))) with
        {
            Others = [new Related(pair.First.Place, Sentence.Of("speed/wound-twice.other"))],
            Advice = Sentence.Of("speed/wound-twice.help"),
        };

    // A spring is run down overnight, and wound again in the morning.
    static bool IsSameDay(Context context, Roll roll, LogEntry first, LogEntry second)
    {
        var moments = context.WalkOf(roll).Moments;
        return moments.First(m => ReferenceEquals(m.Entry, first)).Day == moments.First(m => ReferenceEquals(m.Entry, second)).Day;
    }
}
