using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Files that ought to be there. stock.yaml and kit.yaml are missed only where something names what they would list.</summary>
static class MissingFiles
{
    public static void Check(IProductionFiles files, FindingList findings)
    {
        if (!files.Names.Any(n => FileKinds.Of(n, files.IsOneFile) == FileKind.Production))
        {
            findings.Add(SheetChecks.MissingFile, "There is no file production.yaml in the folder.", new Place("production.yaml", 1, 1, 0), "Write one that begins with `spoolbook: 1`, `title:` and `code:`, or name the folder that holds it.");
        }
    }
}
