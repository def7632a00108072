using Spoolbook.Checks.Ruling;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Accepting;

/// <summary>Is a waiver itself right? Checked last, when it is known which waivers turned something off.</summary>
static class WaiverChecks
{
    /// <summary>A waiver that does not say why.</summary>
    public static readonly WaiverCheck NoReason = new("accept/no-reason", Level.Error);

    /// <summary>A waiver for a check that does not exist.</summary>
    public static readonly WaiverCheck UnknownCheck = new("accept/unknown-check", Level.Error);

    /// <summary>A waiver that turns nothing off.</summary>
    public static readonly WaiverCheck NothingToAccept = new("accept/nothing-to-accept", Level.Note);

    /// <summary>A waiver for a check that is about the sheet itself.</summary>
    public static readonly WaiverCheck CannotBeAccepted = new("accept/cannot-be-accepted", Level.Error);

    /// <summary>All of this file.</summary>
    public static IEnumerable<Check> All => [CannotBeAccepted, NoReason, NothingToAccept, UnknownCheck];

    /// <param name="used">Waivers that turned a finding off.</param>
    /// <param name="held">What was not fully checked: findings waived there may not have come up.</param>
    /// <param name="printed">Whether the papers were printed to the end, so that all its findings are known.</param>
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
                    yield return finding with
                    {
                        Roll = roll.Name.Value,
                    };
                }
            }
        }
    }

    static Finding? Judge(Waiver waiver, bool used, bool doubtful, SuppressedScope held, bool printed)
    {
        var name = waiver.Check.Value;
        if (HouseLevels.IsFixed(name) && !HouseLevels.IsAboutSheet(name) && CheckList.Named(name) is not null)
        {
            return CannotBeAccepted.At(
                waiver.Check.Place,
                Sentence.Of(
                    HouseLevels.IsAboutProgram(name) ? "accept/cannot-be-accepted.message.program"
                        : HouseLevels.KeepsFromShipping(name) ? "accept/cannot-be-accepted.message.shipping"
                        : "accept/cannot-be-accepted.message.printing",
                    ("check", name)
                )
            ) with
            {
                Advice = Sentence.Of("accept/cannot-be-accepted.help.no-sheet"),
            };
        }

        if (HouseLevels.IsFixed(name) && CheckList.Named(name) is not null)
        {
            return CannotBeAccepted.At(waiver.Check.Place, Sentence.Of("accept/cannot-be-accepted.message", ("check", name))) with
            {
                Advice = Sentence.Of("accept/cannot-be-accepted.help"),
            };
        }

        if (CheckList.Named(name) is not { } check)
        {
            var near = Catalogue.Nearest(name);
            return UnknownCheck.At(waiver.Check.Place, Sentence.Of("accept/unknown-check.message", ("check", name))) with
            {
                Advice = near is null ? Sentence.Of("accept/unknown-check.help") : Sentence.Of("common.did-you-mean", ("near", near)),
            };
        }

        if (waiver.Reason is null)
        {
            return NoReason.At(waiver.Place, Sentence.Of("accept/no-reason.message", ("check", name))) with
            {
                Advice = Sentence.Of("accept/no-reason.help"),
            };
        }

        return used || doubtful || held.Silences(check) || (check.Round == Round.Printing && !printed) || check.Round == Round.Shipping
            ? null
            : NothingToAccept.At(waiver.Place, Describe(waiver)) with
            {
                Advice = Sentence.Of("accept/nothing-to-accept.help"),
            };
    }

    static Sentence Describe(Waiver waiver)
    {
        var places = new (string Key, Located<string>? Name)[]
        {
            ("accept/nothing-to-accept.value.take", waiver.Take),
            ("accept/nothing-to-accept.value.shot", waiver.Shot),
            ("accept/nothing-to-accept.value.roll", waiver.Roll),
            ("accept/nothing-to-accept.value.lot", waiver.Lot),
            ("accept/nothing-to-accept.value.piece", waiver.Piece),
        };
        var named = places.Where(p => p.Name is not null).Select(p => Sentence.Of(p.Key, ("name", p.Name!.Value))).ToArray();
        return named.Length == 0
            ? Sentence.Of("accept/nothing-to-accept.message", ("check", waiver.Check.Value))
            : Sentence.Of(
                "accept/nothing-to-accept.message.about",
                ("check", waiver.Check.Value),
                ("places", Sentence.Joined(", ", named))
            );
    }
}
