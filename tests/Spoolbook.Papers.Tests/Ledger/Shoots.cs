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

    public static LedgerSource Sample { get; } = Of(new FolderFiles(Repository.Sample));

    public static LedgerSource Awkward { get; } = Of(TextFiles.OneFile(AwkwardShoot.Yaml));

    public static LedgerSource Of(IProductionFiles files)
    {
        var read = ProductionReader.Read(files);
        return new LedgerSource(Books.Of(BookKeeper.Keep(read.Production!)), read.Findings, [], Made);
    }
}
