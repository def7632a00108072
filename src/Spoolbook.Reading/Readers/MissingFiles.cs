using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// Files that ought to be there. Raw stock and kit are missed only where a roll names some of it and nothing
/// at all is listed: one finding, and the lists count as unread, instead of one finding for every take.
/// </summary>
static class MissingFiles
{
    /// <summary>The production, with the lists marked that nobody wrote.</summary>
    public static Production? Check(IProductionFiles files, Production? production, FindingList findings)
    {
        if (!files.Names.Any(n => FileKinds.Of(n, files.IsOneFile) == FileKind.Production))
        {
            findings.Add(
                SheetChecks.MissingFile,
                "There is no file production.yaml in the folder.",
                new Place("production.yaml", 1, 1, 0),
                "Write one that begins with `spoolbook: 1`, `title:` and `code:`, or name the folder that holds it."
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
                "A lot of raw stock is named here, and no raw stock is listed anywhere.",
                lot.Place,
                "Write stock.yaml, with `spoolbook: 1` and the lots under `lots:`."
            );
            production = production with { Unread = production.Unread.Add(Part.Lots) };
        }

        var piece = production.Rolls.SelectMany(PiecesOf).FirstOrDefault(p => p is not null);
        if (HasNoKit(production) && piece is not null && !production.Unread.Contains(Part.Kit))
        {
            findings.Add(
                SheetChecks.MissingFile,
                "A piece of the kit is named here, and no kit is listed anywhere.",
                piece.Place,
                "Write kit.yaml, with `spoolbook: 1` and what you carry under `bodies:`, `lenses:` and so on."
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
