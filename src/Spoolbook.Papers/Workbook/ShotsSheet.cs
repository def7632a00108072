using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>The shots that are got or listed, and the film of all their takes: what the forecast goes by.</summary>
static class ShotsSheet
{
    const string OfThisShot = "EXACT(Takes[Scene and shot],[@Shot])";

    public static TableSheet<(string Name, bool Listed, bool Got, Footage Film, Takes Takes)> Of(LedgerSource source, WorkbookUnits units, WorkbookWords say) => new(
        "Shots",
        say["about.shots"],
        [
            new("Shot", CellFormat.Words, 22, s => s.Name),
            new("Listed", CellFormat.Words, 8, s => s.Listed ? "yes" : "no") { Codes = FilmSheet.YesNo },
            new("Takes", CellFormat.Count, 8, s => CellValue.Calculated($"SUMPRODUCT({OfThisShot}*1)", s.Takes.All)) { Summed = true },
            new("Good takes", CellFormat.Count, 8, s => CellValue.Calculated($"SUMPRODUCT({OfThisShot}*(Takes[Mark]=\"G\"))", s.Takes.Good)) { Summed = true },
            new("State", CellFormat.Words, 8, s => CellValue.CalculatedWords("IF([@[Good takes]]>0,\"got\",\"left\")", s.Got ? "got" : "left")) { Codes = ["got", "left"] },
            new("Frames", CellFormat.Frames, 10, s => CellValue.Calculated("SUMPRODUCT(EXACT(Film[Shot],[@Shot])*Film[Frames])", s.Film.Frames)) { Summed = true },
            new("Length", CellFormat.Length, 11, s => CellValue.Calculated("[@Frames]/FramesPerUnit", units.Length(s.Film))) { Summed = true, Bars = true },
        ],
        Rows(source));

    static ImmutableArray<(string Name, bool Listed, bool Got, Footage Film, Takes Takes)> Rows(LedgerSource source)
    {
        var got = source.Forecast.Ground.Finished.Select(s => s.Name).ToList();
        var listed = source.Shoot.Production.Shots.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        var film = source.Shoot.Counted.SelectMany(r => r.Strip.Segments).ToLookup(s => s.Owner?.Take.ShotName, s => s.Span.Length.Frames);
        var takes = source.Shoot.Counted.SelectMany(r => r.Layers).ToLookup(l => l.Take.ShotName, l => l.Take.Mark.Value);
        return
        [
            .. got.Concat(source.Shoot.Production.Shots.Select(s => s.Name)).Distinct(StringComparer.Ordinal).Select((name, i) => (
                name,
                listed.Contains(name),
                i < got.Count,
                new Footage(film[name].Sum()),
                new Takes(takes[name].Count(), takes[name].Count(m => m == Mark.Good)))),
        ];
    }
}

/// <summary>How many takes a shot has.</summary>
readonly record struct Takes(int All, int Good);
