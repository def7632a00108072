using Spoolbook.Papers.Ledger;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;

namespace Spoolbook.Papers.Tests.Ledger;

/// <summary>Whole shoots, read as the program reads them.</summary>
static class Shoots
{
    public static DateOnly Made { get; } = new(2026, 10, 6);

    public static LedgerSource Sample { get; } = Of(new FolderFiles(Repository.Sample));

    public static LedgerSource Awkward { get; } = Of(TextFiles.OneFile(AwkwardShoot.Yaml));

    /// <summary>Half a shoot, with a forecast for the other half.</summary>
    public static LedgerSource HalfWay { get; } = Production("half-way");

    /// <summary>One roll with one take, and one with ninety.</summary>
    public static LedgerSource Ninety { get; } = Production("one-take-and-ninety");

    /// <summary>A shoot whose stock came, went and was lost.</summary>
    public static LedgerSource Restocked { get; } =
        Of(
            TextFiles.OneFile(
                """
                spoolbook: 1
                title: Restocked
                code: MORE
                lots:
                  - {lot: N250-A, stock: Colour negative 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 4, unit-price: 38.50}
                stock-log:
                  - came: {lot: N250-A, units: [5, 6], on: 2026-10-03, from: the school's store, price: 38.50}
                  - sent-away: {lot: N250-A, units: [4], on: 2026-10-03, to: another production}
                  - damaged: {short-end-of: R01, on: 2026-10-05, note: opened in the light}
                rolls:
                  - roll: R01
                    lot: N250-A
                    unit: 1
                    load: {on: 2026-10-04 09:10, head: 4+00}
                    log: [{take: {scene: 1, shot: A, take: 1, to: 30+00, mark: good}}]
                    unload: {on: 2026-10-04 16:45, tail: 2+00}
                """
            )
        );

    /// <summary>One of the productions for testing the whole program.</summary>
    public static LedgerSource Production(string name) =>
        Of(new FolderFiles(Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/productions", name)));

    public static LedgerSource Of(IProductionFiles files)
    {
        var read = ProductionReader.Read(files);
        return new LedgerSource(Books.Of(read.Production!), read.Findings, [], Made);
    }
}
