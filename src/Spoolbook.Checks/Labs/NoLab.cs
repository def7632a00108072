using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class NoLab
{
    public static readonly RecordCheck Check = new("lab/no-lab", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from first in context.Production.Rolls.Where(r => r.GoesToLab && r.Lab is not null).Take(1)
        where context.Production.Lab is null
        select Check.At(first.Lab!.Place, Sentence.Of("lab/no-lab.message", ("first", first.Name.Value))) with
        {
            Advice = Sentence.Of("lab/no-lab.help"),
        };
}
