using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class NoReturnAddress
{
    public static readonly RecordCheck Check = new("lab/no-return-address", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from lab in new[] { context.Production.Lab }
        where lab is not null && lab.ReturnTo.IsEmpty && context.Production.Rolls.Any(r => r.GoesToLab)
        select Check.At(lab.Place, Sentence.Of("lab/no-return-address.message")) with
        {
            Advice = Sentence.Of("lab/no-return-address.help"),
        };
}
