using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class PracticeRollSent
{
    public static readonly RecordCheck Check = new("lab/practice-roll-sent", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where roll.IsPractice
        let sent = roll.Lab?.Send is { Value: true } send
            ? send.Place
            : Consigned.To(context.Production, roll).Select(c => c.Naming.Place).FirstOrDefault()
        where sent.File is { Length: > 0 }
        select Check.At(roll, sent, Sentence.Of("lab/practice-roll-sent.message", ("roll", roll.Name.Value))) with
        {
            Others = [new(roll.Practice!.Place, Sentence.Of("lab/practice-roll-sent.other.for-practice"))],
            Advice = Sentence.Of("lab/practice-roll-sent.help"),
        };
}
