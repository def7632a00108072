using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Ruling;

static class BadTolerance
{
    public static readonly RecordCheck Check = new("rules/bad-tolerance", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from rule in context.Production.Rules?.Tolerances ?? []
        let tolerance = Tolerances.Named(rule.Name.Value)
        where tolerance is not null && tolerance.Rewritten(rule.Value.Value, context.Production.Gauge) is null
        select Check.At(
            rule.Value.Place,
            Sentence.Of(
                "rules/bad-tolerance.message",
                ("tolerance", tolerance.Name),
                ("kind", tolerance.Kind.Name),
                ("rule", rule.Value.Value)
            )
        ) with
        {
            Figures = [new Figure(Sentence.Of("rules/bad-tolerance.figure.usual"), tolerance.UsualText)],
            Advice = tolerance.Kind.Help,
        };
}
