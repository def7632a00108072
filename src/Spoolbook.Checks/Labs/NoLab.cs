using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Labs;

static class NoLab
{
    public static readonly RecordCheck Check = new("lab/no-lab", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from first in context.Production.Rolls.Where(r => Orders.GoesToLab(r) && r.Lab is not null).Take(1)
        where context.Production.Lab is null
        select Check.At(first.Lab!.Place, $"Nothing says which lab does what is ordered for roll {first.Name.Value}") with
        {
            Help = "Write in production.yaml: `lab: {name: …, processes: […], return-to: […]}`. A roll that goes to none says `send: no`.",
        };
}
