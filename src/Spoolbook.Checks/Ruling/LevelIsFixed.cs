using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Ruling;

static class LevelIsFixed
{
    public static readonly RecordCheck Check = new("rules/level-is-fixed", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from rule in context.Production.Rules?.Levels ?? []
        where HouseLevels.IsFixed(rule.Name.Value)
        select Check.At(rule.Name.Place, Sentence.Of("rules/level-is-fixed.message", ("rule", rule.Name.Value))) with
        {
            Advice = Sentence.Of("rules/level-is-fixed.help"),
        };
}
