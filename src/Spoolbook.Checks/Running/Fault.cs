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
        new(Name, Level.Error, $"The check {check.Name} broke: this is a mistake in Spoolbook, not in your sheet", place)
        {
            Roll = roll?.Name.Value,
            Figures = [new Figure("what broke", e.GetType().Name)],
            Help = "Report it with this line of the sheet; the other checks have been made.",
        };
}
