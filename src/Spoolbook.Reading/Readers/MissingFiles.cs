using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// Files that ought to be there. A missing list of raw stock or kit is reported only where a roll names some of it and nothing at all
/// is listed: one finding, and the list counts as unread, instead of a finding for every take.
/// </summary>
static class MissingFiles
{
    /// <summary>The production, its missing lists marked as unread.</summary>
    public static Production? Check(IProductionFiles files, Production? production, FindingList findings)
    {
        if (!files.Names.Any(n => FileKinds.Of(n, files.IsOneFile) == FileKind.Production))
        {
            findings.Add(
                SheetChecks.MissingFile,
                Sentence.Of("sheet/missing-file.message.production"),
                new Place("production.yaml", 1, 1, 0),
                Sentence.Of("sheet/missing-file.help.production")
            );
        }

        if (production is null)
        {
            return null;
        }

        var lot = production.Rolls.Select(r => r.Lot).FirstOrDefault(l => l is not null);
        if (production.Lots.IsEmpty && lot is not null && !production.Unread.Contains(Part.Lots))
        {
            findings.Add(
                SheetChecks.MissingFile,
                Sentence.Of("sheet/missing-file.message.stock"),
                lot.Place,
                Sentence.Of("sheet/missing-file.help.stock")
            );
            production = production with { Unread = production.Unread.Add(Part.Lots) };
        }

        var piece = production.Rolls.SelectMany(PiecesOf).FirstOrDefault(p => p is not null);
        if (HasNoKit(production) && piece is not null && !production.Unread.Contains(Part.Kit))
        {
            findings.Add(
                SheetChecks.MissingFile,
                Sentence.Of("sheet/missing-file.message.kit"),
                piece.Place,
                Sentence.Of("sheet/missing-file.help.kit")
            );
            production = production with { Unread = production.Unread.Add(Part.Kit) };
        }

        return production;
    }

    static bool HasNoKit(Production p) =>
        p.Bodies.IsEmpty && p.Lenses.IsEmpty && p.Filters.IsEmpty && p.Meters.IsEmpty && p.Motors.IsEmpty && p.Items.IsEmpty;

    static IEnumerable<Located<string>?> PiecesOf(Roll roll) =>
        roll.Takes.SelectMany(t => (Located<string>?[])[t.Lens, t.Meter, t.Motor, .. t.Filters]).Prepend(roll.Body);
}
