using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Ruling;

static class LevelIsFixed
{
    public static readonly RecordCheck Check = new("rules/level-is-fixed", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) => OfTheSheet(context).Concat(OfOthers(context));

    static IEnumerable<Finding> OfOthers(Context context) =>
        from rule in context.Production.Rules?.Levels ?? []
        let name = rule.Name.Value
        where HouseLevels.IsFixed(name) && !HouseLevels.IsAboutSheet(name)
        let key = HouseLevels.IsAboutProgram(name) ? "rules/level-is-fixed.message.program"
        : HouseLevels.KeepsFromShipping(name) ? "rules/level-is-fixed.message.shipping"
        : "rules/level-is-fixed.message.printing"
        select Check.At(rule.Name.Place, Sentence.Of(key, ("rule", name))) with
        {
            Advice = Sentence.Of("rules/level-is-fixed.help.no-sheet"),
        };

    static IEnumerable<Finding> OfTheSheet(Context context) =>
        from rule in context.Production.Rules?.Levels ?? []
        where HouseLevels.IsAboutSheet(rule.Name.Value)
        select Check.At(rule.Name.Place, Sentence.Of("rules/level-is-fixed.message", ("rule", rule.Name.Value))) with
        {
            Advice = Sentence.Of("rules/level-is-fixed.help"),
        };
}
