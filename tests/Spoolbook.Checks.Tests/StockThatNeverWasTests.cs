using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Tests;

/// <summary>A can that never was cannot be put into the fridge, taken out of it, or X-rayed.</summary>
public class StockThatNeverWasTests
{
    [Theory]
    [InlineData(
        "out-of-cold: {lot: D, units: [2, 9], on: 2026-10-01, from: fridge}",
        "Unit 9 of lot D cannot have been taken out of the cold"
    )]
    [InlineData("into-cold: {lot: D, units: [9], on: 2026-10-01}", "Unit 9 of lot D cannot have been put into the cold")]
    [InlineData("x-rayed: {lot: D, units: [9], on: 2026-10-01}", "Unit 9 of lot D cannot have been X-rayed")]
    [InlineData("x-rayed: {short-end-of: R1, piece: 3, on: 2026-10-03}", "Short end R1-SE3 cannot have been X-rayed")]
    [InlineData("lost: {short-end-of: R1, piece: 3, on: 2026-10-03}", "Short end R1-SE3 cannot have been lost")]
    public void A_number_that_no_can_has_is_flagged(string entry, string says) =>
        Assert.StartsWith(says, Assert.Single(Found(entry)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("out-of-cold: {lot: D, units: [1, 2], on: 2026-10-01, from: fridge}")]
    [InlineData("out-of-cold: {lot: D, units: [5], on: 2026-10-01, from: fridge}")] // came with the second delivery
    [InlineData("out-of-cold: {lot: D, on: 2026-10-01, from: fridge}")]
    [InlineData("x-rayed: {short-end-of: R1, piece: 2, on: 2026-10-03}")]
    public void A_can_that_was_there_is_not(string entry) => Assert.Empty(Found(entry));

    static IEnumerable<Finding> Found(string entry) =>
        WholeRun
            .Of(
                TextFiles.OneFile(
                    $$"""
                    spoolbook: 1
                    title: The Ferry Light
                    code: FERRY
                    lots:
                      - {lot: D, stock: 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 2}
                    stock-log:
                      - came: {lot: D, units: [5], on: 2026-09-30, from: the store}
                      - split: {short-end-of: R1, on: 2026-10-02 18:00, into: [20+00, 18+00]}
                      - {{entry}}
                    rolls:
                      - roll: R1
                        lot: D
                        unit: 1
                        load: {on: 2026-10-02 09:00, light: dark, head: 4+00}
                        log:
                          - take: {scene: 1, shot: A, take: 1, to: 62+00, speed: 24, mark: good}
                        unload: {on: 2026-10-02 16:00, light: dark, left: 38+00}
                    """
                )
            )
            .Findings.Where(f => f.Check == "stock/log-impossible");
}
