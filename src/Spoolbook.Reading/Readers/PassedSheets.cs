using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// Files that look like a record and were not read. If another file gave the same, this one is a copy: a warning. If none did, every
/// paper lacks it: an error.
/// </summary>
static class PassedSheets
{
    const string SheetEnding = ".yaml";

    /// <summary>The production, with the parts that may be in those files marked as unread.</summary>
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
        // Both names are right: the program cannot know which file is.
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

    /// <summary>The name under which the file would be read.</summary>
    static string Right(PassedSheet sheet) =>
        sheet.Kind switch
        {
            FileKind.Roll => $"{SheetNames.Rolls}/{Stem(sheet)}{SheetEnding}",
            var kind => kind.ToString().ToLowerInvariant() + SheetEnding,
        };

    static string Stem(PassedSheet sheet) => SheetNames.StemOf(sheet.Name) is { Length: > 0 } stem ? stem : "r01";

    /// <summary>Where the same was read from; null where nothing else has it.</summary>
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

        // One of the two files does not show its roll's name.
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
