using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Ruling;

static class NothingOfThatName
{
    public static readonly RecordCheck Check = new("rules/nothing-of-that-name", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        var rules = context.Production.Rules;
        foreach (var rule in rules?.Levels ?? [])
        {
            var name = rule.Name.Value;
            if (!HouseLevels.IsFixed(name) && CheckList.Named(name) is null && !CheckList.Groups.Contains(name))
            {
                yield return Unknown(rule.Name, "check or group", Catalogue.Nearest(name) ?? Likeness.Nearest(name, CheckList.Groups), "`spoolbook explain` lists the checks by group.");
            }
        }

        foreach (var rule in rules?.Tolerances ?? [])
        {
            if (Tolerances.Named(rule.Name.Value) is null)
            {
                yield return Unknown(rule.Name, "tolerance", Likeness.Nearest(rule.Name.Value, Tolerances.All.Select(t => t.Name)), "The page of a check names its tolerances: `spoolbook explain` and the check's name.");
            }
        }
    }

    static Finding Unknown(Located<string> name, string what, string? near, string otherwise) =>
        Check.At(name.Place, $"There is no {what} `{name.Value}`, so nothing can be set for it") with
        {
            Help = near is null ? otherwise : $"Did you mean `{near}`?",
        };
}
