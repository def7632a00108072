using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Ruling;

static class LevelIsFixed
{
    public static readonly RecordCheck Check = new("rules/level-is-fixed", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from rule in context.Production.Rules?.Levels ?? []
        where HouseLevels.IsFixed(rule.Name.Value)
        select Check.At(rule.Name.Place, $"The level of `{rule.Name.Value}` cannot be set: such a finding is about the sheet itself, not about the film") with
        {
            Help = "Take the line out, and mend in the sheet what is found.",
        };
}
