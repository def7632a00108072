using Spoolbook.Checks.Ruling;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Accepting;

/// <summary>
/// What earlier errors keep out of the later rounds, so that one mistake does not trail follow-on findings: the rolls
/// with an error, and for an error outside any roll, the groups that read that file.
/// </summary>
sealed class SuppressedScope
{
    readonly HashSet<string> _rolls = new(StringComparer.Ordinal);
    readonly HashSet<string> _groups = new(StringComparer.Ordinal);

    // The groups not to trust while kit, stock or production file is unread in part.
    static readonly string[] ReadsKit = ["kit", "speed", "exposure", "focus", "load"];
    static readonly string[] ReadsStock = ["stock", "length", "exposure", "lab"];
    static readonly string[] ReadsProduction = ["lab", "cover"];

    public SuppressedScope(Production production, IEnumerable<Finding> earlier)
    {
        var errors =
            from finding in earlier
            // The text is read without the character, so nothing is in doubt.
            where finding.Level == Level.Error && finding.Check != "sheet/bad-character" && !finding.SparesRoll
            where Waivers.For(finding, production) is null && !HouseLevels.IsOff(finding.Check, production)
            select finding;
        HoldWhatIsUnread(production);
        foreach (var error in errors)
        {
            if (error.Roll is { } roll)
            {
                _rolls.Add(roll);
            }
            else if (
                error.Check != "sheet/missing-file"
                && production.Rolls.FirstOrDefault(r => r.Place.File == error.Place.File && r.Place.File != production.Place.File)
                    is { } read
            )
            {
                _rolls.Add(read.Name.Value);
            }
            else if (error.Check.StartsWith("sheet/", StringComparison.Ordinal))
            {
                _groups.UnionWith(ReadersOf(error.Place.File, production));
            }
        }
    }

    /// <summary>Whether to skip a check: what it reads is in doubt, or it compares rolls and one of them is in doubt.</summary>
    public bool Silences(Check check) =>
        _groups.Contains(check.Group) || (Anything && check is (BookCheck or RecordCheck { NeedsAll: true }));

    /// <summary>Whether any roll was not fully checked.</summary>
    public bool Anything => _rolls.Count > 0;

    public bool Holds(Roll roll) => _rolls.Contains(roll.Name.Value);

    public bool Holds(Finding finding) => finding.Roll is { } roll && _rolls.Contains(roll);

    // A lot that is not listed may be in the part of the list that could not be read.
    void HoldWhatIsUnread(Production production)
    {
        if (production.Unread.Contains(Part.Kit) && production.Bodies.IsEmpty)
        {
            _groups.UnionWith(ReadsKit);
        }

        if (production.Unread.Contains(Part.Lots))
        {
            _groups.UnionWith(production.Lots.IsEmpty ? ReadsStock : []);
            _rolls.UnionWith(production.Rolls.Where(r => r.Lot is not null && production.LotOf(r) is null).Select(r => r.Name.Value));
        }
    }

    static IEnumerable<string> ReadersOf(string file, Production production) =>
        file.StartsWith("kit.", StringComparison.Ordinal) ? ReadsKit
        : file.StartsWith("stock.", StringComparison.Ordinal) ? ReadsStock
        : file.StartsWith("production.", StringComparison.Ordinal) ? ReadersOfWhole(file, production)
        : CheckList.Groups;

    // Stock and kit may be in the big file too. Then a mistake there may be why a lot or a lens is missing.
    static IEnumerable<string> ReadersOfWhole(string file, Production production)
    {
        var stock = production.Lots.Any(l => l.Place.File != file) ? [] : ReadsStock;
        var kit = production.Bodies.Any(b => b.Place.File != file) ? [] : ReadsKit;
        return [.. ReadsProduction, .. stock, .. kit];
    }
}
