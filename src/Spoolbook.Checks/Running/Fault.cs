using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>A check of ours that broke. The sheet is not to blame.</summary>
public static class Fault
{
    /// <summary>The name it is reported under.</summary>
    public const string Name = "spoolbook/fault";

    internal static readonly StageCheck Listed = new(Name, Level.Error, Round.Breaking);

    internal static Finding Of(Check check, Place place, Roll? roll, Exception e) =>
        new(Name, Level.Error, Sentence.Of("spoolbook/fault.message", ("check", check.Name)), place)
        {
            Roll = roll?.Name.Value,
            Figures = [new Figure(Sentence.Of("spoolbook/fault.figure.what-broke"), e.GetType().Name)],
            Advice = Sentence.Of("spoolbook/fault.help"),
        };
}
