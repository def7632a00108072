using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Readers;

namespace Spoolbook.Reading;

/// <summary>A production's files to its records: all of reading, in its order.</summary>
public static class ProductionReader
{
    /// <summary>Reads whatever is there. A mistake in a file is a finding, and the rest is read all the same.</summary>
    public static ReadResult Read(IProductionFiles files)
    {
        var findings = new FindingList();
        var context = new ReadingContext(findings, files.OpenPicture);
        var opener = new FileOpener(files, findings);
        var parts = new ProductionParts(context);

        // The file with the gauge goes first: without it no foot can be counted.
        foreach (var name in files.Names.OrderBy(n => FileKinds.Of(n, files.IsOneFile)).ThenBy(n => n, StringComparer.Ordinal))
        {
            var kind = FileKinds.Of(name, files.IsOneFile);
            if (opener.Open(name) is { } root && MapReader.Alone(root, FileKinds.TableOf(kind), context) is { } map)
            {
                parts.Add(kind, map);
            }
            else
            {
                parts.Miss(kind);
            }
        }

        Borrow(files, opener, parts, context);
        var found = PassedSheets.Check(files, parts.Joined(), findings);
        var production = MissingFiles.Check(files, GoneRolls.Check(files, found, findings), findings);
        if (production is not null)
        {
            Names.Check(production, findings);
            AlikeNames.Check(production, findings);
            RollNumbers.Check(production, findings);
            References.Check(production, findings);
        }

        return new ReadResult(production, findings.InOrder(), new SourceTexts(opener.Sources));
    }

    static void Borrow(IProductionFiles files, FileOpener opener, ProductionParts parts, ReadingContext context)
    {
        if (files.School is not { } place)
        {
            return;
        }

        var own = new ReadingContext(context.Findings, files.OpenSchoolPicture) { Gauge = context.Gauge };
        if (opener.OpenSchool(place.Name) is { } root && MapReader.Alone(root, DepartmentKeys.Table, own) is { } map)
        {
            parts.Borrow(map, new ReadingContext(new FindingList(), files.OpenSchoolPicture) { Gauge = context.Gauge }, place.Production);
        }
        else
        {
            parts.MissSchool();
        }
    }
}
