using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Ruling;

static class BadTolerance
{
    public static readonly RecordCheck Check = new("rules/bad-tolerance", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from rule in context.Production.Rules?.Tolerances ?? []
        let tolerance = Tolerances.Named(rule.Name.Value)
        where tolerance is not null && tolerance.Rewritten(rule.Value.Value, context.Production.Gauge) is null
        select Check.At(rule.Value.Place, $"The tolerance `{tolerance.Name}` is {tolerance.Kind.Name}, and `{rule.Value.Value}` is none") with
        {
            Figures = [new Figure("usual", tolerance.UsualText)],
            Help = tolerance.Kind.Help,
        };
}
