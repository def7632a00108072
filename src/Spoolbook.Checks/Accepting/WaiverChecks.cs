using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Accepting;

/// <summary>Is a waiver itself right? Asked last, when it is known which of them turned something off.</summary>
static class WaiverChecks
{
    /// <summary>A waiver that does not say why.</summary>
    public static readonly WaiverCheck NoReason = new("accept/no-reason", Level.Error);

    /// <summary>A waiver for a check that there is not.</summary>
    public static readonly WaiverCheck UnknownCheck = new("accept/unknown-check", Level.Error);

    /// <summary>A waiver that turns nothing off.</summary>
    public static readonly WaiverCheck NothingToAccept = new("accept/nothing-to-accept", Level.Note);

    /// <summary>A waiver for a check that is about the sheet itself.</summary>
    public static readonly WaiverCheck CannotBeAccepted = new("accept/cannot-be-accepted", Level.Error);

    /// <summary>All of this file.</summary>
    public static IEnumerable<Check> All => [CannotBeAccepted, NoReason, NothingToAccept, UnknownCheck];

    /// <param name="used">Waivers that turned a finding off.</param>
    /// <param name="held">What was not checked to the end: what waivers there are for may not have come up.</param>
    /// <param name="printed">Whether the papers were printed to the end, so that what printing says has come up.</param>
    public static IEnumerable<Finding> Of(Production production, IReadOnlySet<Waiver> used, SuppressedScope held, bool printed)
    {
        foreach (var waiver in production.Accept)
        {
            if (Judge(waiver, used.Contains(waiver), held.Anything, held, printed) is { } finding)
            {
                yield return finding;
            }
        }

        foreach (var roll in production.Rolls)
        {
            foreach (var waiver in roll.Accept)
            {
                if (Judge(waiver, used.Contains(waiver), held.Holds(roll), held, printed) is { } finding)
                {
                    yield return finding with { Roll = roll.Name.Value };
                }
            }
        }
    }

    static Finding? Judge(Waiver waiver, bool used, bool doubtful, SuppressedScope held, bool printed)
    {
        var name = waiver.Check.Value;
        if (HouseLevels.IsFixed(name) && !HouseLevels.IsAboutSheet(name) && CheckList.Named(name) is not null)
        {
            return CannotBeAccepted.At(waiver.Check.Place, HouseLevels.IsAboutProgram(name)
                ? $"`{name}` cannot be accepted: such a finding is a mistake in Spoolbook, not a rule of the shoot that was broken"
                : $"`{name}` cannot be accepted: with such a finding the papers cannot be printed") with
            {
                Help = "Take the waiver out.",
            };
        }

        if (HouseLevels.IsFixed(name) && CheckList.Named(name) is not null)
        {
            return CannotBeAccepted.At(waiver.Check.Place, $"`{name}` cannot be accepted: such a finding says that the sheet is written wrongly, not that a rule of the shoot was broken") with
            {
                Help = "Take the waiver out, and mend in the sheet what is found.",
            };
        }

        if (CheckList.Named(name) is not { } check)
        {
            var near = Catalogue.Nearest(name);
            return UnknownCheck.At(waiver.Check.Place, $"There is no check `{name}`, so nothing can be accepted under that name") with
            {
                Help = near is null ? "`spoolbook explain` lists the checks." : $"Did you mean `{near}`?",
            };
        }

        if (waiver.Reason is null)
        {
            return NoReason.At(waiver.Place, $"The waiver for `{name}` does not say why the rule was broken") with
            {
                Help = "Add the reason, since the lab reads it on the camera report: `reason: …`",
            };
        }

        return used || doubtful || held.Silences(check) || (check.Round == Round.Printing && !printed) ? null : NothingToAccept.At(waiver.Place, $"The waiver for `{name}` turns nothing off: there is no such finding{Of(waiver)}") with
        {
            Help = "Take it out, or see whether it names the right place.",
        };
    }

    static string Of(Waiver waiver)
    {
        var places = new (string What, Located<string>? Name)[]
        {
            ("take", waiver.Take), ("shot", waiver.Shot), ("roll", waiver.Roll), ("lot", waiver.Lot), ("the piece", waiver.Piece),
        };
        var named = string.Join(", ", places.Where(p => p.Name is not null).Select(p => $"{p.What} {p.Name!.Value}"));
        return named.Length == 0 ? "" : $" about {named}";
    }
}
