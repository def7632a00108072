using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Ruling;

static class LevelIsFixed
{
    public static readonly RecordCheck Check = new("rules/level-is-fixed", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) => OfTheSheet(context).Concat(OfOthers(context));

    static IEnumerable<Finding> OfOthers(Context context) =>
        from rule in context.Production.Rules?.Levels ?? []
        let name = rule.Name.Value
        where HouseLevels.IsFixed(name) && !HouseLevels.IsAboutSheet(name)
        let why = HouseLevels.IsAboutProgram(name) ? "such a finding is a mistake in Spoolbook" : "with such a finding the papers cannot be printed"
        select Check.At(rule.Name.Place, $"The level of `{name}` cannot be set: {why}") with
        {
            Help = "Take the line out.",
        };

    static IEnumerable<Finding> OfTheSheet(Context context) =>
        from rule in context.Production.Rules?.Levels ?? []
        where HouseLevels.IsAboutSheet(rule.Name.Value)
        select Check.At(rule.Name.Place, $"The level of `{rule.Name.Value}` cannot be set: such a finding is about the sheet itself, not about the film") with
        {
            Help = "Take the line out, and mend in the sheet what is found.",
        };
}
