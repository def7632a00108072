using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Ledger;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Tests.Ledger;

/// <summary>Whole shoots, read as the program reads them.</summary>
static class Shoots
{
    public static DateOnly Made { get; } = new(2026, 10, 6);

    public static LedgerSource Sample { get; } = Of(new FolderFiles(Path.Combine(Root(), "sample-production")));

    public static LedgerSource Awkward { get; } = Of(TextFiles.OneFile(AwkwardShoot.Yaml));

    public static LedgerSource Of(IProductionFiles files)
    {
        var read = ProductionReader.Read(files);
        return new LedgerSource(Books.Of(BookKeeper.Keep(read.Production!)), read.Findings, [], Made);
    }

    static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Reports.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests run outside the repository.");
        }

        return folder;
    }
}
