using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// Files that look like a record and were not read. Where what is in it was read from another file it is a copy, and a
/// warning; where it was not, it is lost to every paper, and an error.
/// </summary>
static class PassedSheets
{
    const string SheetEnding = ".yaml";

    /// <summary>The production, with the parts marked that may be in those files.</summary>
    public static Production? Check(IProductionFiles files, Production? production, FindingList findings)
    {
        foreach (var file in files.PassedOver)
        {
            var sheet = PassedSheet.Of(file);
            if (!sheet.IsRecord)
            {
                continue;
            }

            var kept = Kept(sheet, files.Names, production);
            findings.Add(Finding(sheet, kept));
            if (kept is null && production is not null)
            {
                production = production with { Unread = [.. production.Unread.AddRange(PartsIn(sheet)).Distinct().Order()] };
            }
        }

        return production;
    }

    static Finding Finding(PassedSheet sheet, Place? kept)
    {
        // Two that are both called as they should be: nobody can know which is the right one.
        var isRival = kept is not null && sheet.IsRival;
        var message =
            isRival ? "sheet/not-read.message.rival"
            : kept is null ? Lost(sheet)
            : sheet.Roll is null ? "sheet/not-read.message.copy"
            : "sheet/not-read.message.roll-copy";
        var help =
            isRival ? "sheet/not-read.help.rival"
            : kept is null ? "sheet/not-read.help.lost"
            : "sheet/not-read.help.copy";
        (string Name, SentenceValue Value)[] values =
        [
            ("file", sheet.Name),
            ("kept", kept?.File ?? ""),
            ("roll", Quote.Short(sheet.Roll ?? "")),
            ("right", Right(sheet)),
        ];
        return new Finding(
            SheetChecks.NotRead,
            kept is null || isRival ? Level.Error : Level.Warning,
            Sentence.Of(message, values),
            new Place(sheet.Name, 1, 1, 0)
        )
        {
            Roll = sheet.Roll,
            Others = kept is { } there ? [new Related(there, Sentence.Of("sheet/not-read.other.read"))] : [],
            Advice = Sentence.Of(help, values),
        };
    }

    static string Lost(PassedSheet sheet) =>
        sheet.Kind != FileKind.Roll ? "sheet/not-read.message.sheet"
        : sheet.Roll is null ? "sheet/not-read.message.nameless"
        : "sheet/not-read.message.roll";

    /// <summary>What it must be called to be read.</summary>
    static string Right(PassedSheet sheet) =>
        sheet.Kind switch
        {
            FileKind.Roll => $"{SheetNames.Rolls}/{Stem(sheet)}{SheetEnding}",
            var kind => kind.ToString().ToLowerInvariant() + SheetEnding,
        };

    static string Stem(PassedSheet sheet) => SheetNames.StemOf(sheet.Name) is { Length: > 0 } stem ? stem : "r01";

    /// <summary>Where the same is read from; null where it is read from nowhere.</summary>
    static Place? Kept(PassedSheet sheet, ImmutableArray<string> read, Production? production)
    {
        if (sheet.Kind != FileKind.Roll)
        {
            return read.FirstOrDefault(name => FileKinds.Of(name, false) == sheet.Kind) is { } name ? new Place(name, 1, 1, 0) : null;
        }

        var rolls = production?.Rolls ?? [];
        if (sheet.Roll is { } roll && rolls.FirstOrDefault(r => r.Name.Value == roll) is { } same)
        {
            return same.Name.Place;
        }

        // Its name cannot be made out here, or that of the roll in the other file there.
        var beside = read.FirstOrDefault(name =>
            FileKinds.Of(name, false) == FileKind.Roll
            && string.Equals(SheetNames.StemOf(name), SheetNames.StemOf(sheet.Name), StringComparison.OrdinalIgnoreCase)
        );
        return beside is not null && (sheet.Roll is null || rolls.All(r => r.Place.File != beside)) ? new Place(beside, 1, 1, 0) : null;
    }

    static ImmutableArray<Part> PartsIn(PassedSheet sheet) =>
        sheet.Kind switch
        {
            FileKind.Stock => [Part.Lots],
            FileKind.Kit => [Part.Kit],
            FileKind.Roll => [Part.Rolls],
            _ => [],
        };
}
