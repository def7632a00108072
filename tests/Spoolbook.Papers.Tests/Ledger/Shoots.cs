using Spoolbook.Papers.Ledger;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;

namespace Spoolbook.Papers.Tests.Ledger;

/// <summary>Whole shoots, read as the program reads them.</summary>
static class Shoots
{
    public static DateOnly Made { get; } = new(2026, 10, 6);

    /// <summary>Three shots by lamplight to come, and only daylight stock left.</summary>
    public static LedgerSource WrongStock { get; } =
        Of(
            TextFiles.OneFile(
                """
                spoolbook: 1
                title: The Lamp Shift
                code: LAMP
                shots:
                  - {scene: 1, shot: A, light: daylight}
                  - {scene: 1, shot: B, light: daylight}
                  - {scene: 1, shot: C, light: daylight}
                  - {scene: 1, shot: D, light: daylight}
                  - {scene: 1, shot: E, light: daylight}
                  - {scene: 2, shot: A, light: tungsten}
                  - {scene: 2, shot: B, light: tungsten}
                  - {scene: 2, shot: C, light: tungsten}
                rates: {currency: EUR}
                lots:
                  - {lot: D, stock: 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 8, unit-price: 40}
                  - {lot: T, stock: 500 T, ei: 500, balance: tungsten, process: ecn-2, length: 100ft, units: 1, practice: no, unit-price: 55}
                stock-log:
                  - lost: {lot: T, units: 1, on: 2026-10-01, note: Left in the sun}
                bodies:
                  - {body: B1, speeds: [24], shutter: 170}
                rolls:
                  - roll: R1
                    lot: D
                    unit: 1
                    body: B1
                    load: {on: 2026-10-02 09:00, light: subdued, head: 4+00}
                    log:
                      - take: {scene: 1, shot: A, take: 1, to: 20+00, stop: 8, mark: good}
                      - take: {scene: 1, shot: B, take: 1, to: 38+00, stop: 8, mark: good}
                      - take: {scene: 1, shot: C, take: 1, to: 58+00, stop: 8, mark: good}
                      - take: {scene: 1, shot: D, take: 1, to: 76+00, stop: 8, mark: good}
                      - take: {scene: 1, shot: E, take: 1, to: 96+00, stop: 8, mark: good}
                      - run-off: {to: 100+00, lens: capped}
                    unload: {on: 2026-10-02 16:00, light: subdued, tail: 2+00}
                """
            )
        );

    public static LedgerSource Sample { get; } = Of(new FolderFiles(Repository.Sample));

    public static LedgerSource Awkward { get; } = Of(TextFiles.OneFile(AwkwardShoot.Yaml));

    /// <summary>Half a shoot, with a forecast for the other half.</summary>
    public static LedgerSource HalfWay { get; } = Production("half-way");

    /// <summary>One roll with one take, and one with ninety.</summary>
    /// <summary>A shoot on 35 mm, in metres.</summary>
    public static LedgerSource InMetres { get; } = Production("metric-35mm-25");

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
