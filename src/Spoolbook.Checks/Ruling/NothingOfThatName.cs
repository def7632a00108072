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
                yield return Unknown(
                    rule.Name,
                    "rules/nothing-of-that-name.message.check",
                    Catalogue.Nearest(name) ?? Likeness.Nearest(name, CheckList.Groups),
                    Sentence.Of("rules/nothing-of-that-name.help.check")
                );
            }
        }

        foreach (var rule in rules?.Tolerances ?? [])
        {
            if (Tolerances.Named(rule.Name.Value) is null)
            {
                yield return Unknown(
                    rule.Name,
                    "rules/nothing-of-that-name.message.tolerance",
                    Likeness.Nearest(rule.Name.Value, Tolerances.All.Select(t => t.Name)),
                    Sentence.Of("rules/nothing-of-that-name.help.tolerance")
                );
            }
        }
    }

    static Finding Unknown(Located<string> name, string says, string? near, Sentence otherwise) =>
        Check.At(name.Place, Sentence.Of(says, ("name", name.Value))) with
        {
            Advice = near is null ? otherwise : Sentence.Of("common.did-you-mean", ("near", near)),
        };
}
