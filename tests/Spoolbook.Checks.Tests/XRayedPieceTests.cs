using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Reading.Files;

namespace Spoolbook.Checks.Tests;

/// <summary>What went through the X-ray machine has the name that is on its can.</summary>
public class XRayedPieceTests
{
    const string Cut = "split: {short-end-of: R1, on: 2026-10-02 18:00, into: [20+00, 18+00]}";

    [Theory]
    [InlineData(Cut, "x-rayed: {short-end-of: R1, piece: 2, on: 2026-10-03}", "Short end R1-SE2: X-rayed once")]
    [InlineData(Cut, "x-rayed: {short-end-of: R1, on: 2026-10-03}", "Short end R1-SE: X-rayed once")]
    [InlineData(
        "into-cold: {short-end-of: R1, on: 2026-10-02 18:00}",
        "x-rayed: {short-end-of: R1, piece: 1, on: 2026-10-03}",
        "Short end R1-SE: X-rayed once"
    )]
    public void A_piece_of_a_short_end_is_named_and_a_short_end_that_nobody_cut_is_whole(string before, string entry, string says) =>
        Assert.Equal([says], Found(before, entry));

    [Fact]
    public void Passes_of_two_pieces_are_two_findings() =>
        Assert.Equal(
            ["Short end R1-SE1: X-rayed once", "Short end R1-SE2: X-rayed 2 times"],
            Found(
                Cut,
                "x-rayed: {short-end-of: R1, piece: 1, on: 2026-10-03}",
                "x-rayed: {short-end-of: R1, piece: 2, on: 2026-10-03, passes: 2}"
            )
        );

    static IEnumerable<string> Found(params string[] entries) =>
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
                      - {{string.Join("\n  - ", entries)}}
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
            .Findings.Where(f => f.Check == "stock/x-rayed")
            .Select(f => f.Message);
}
