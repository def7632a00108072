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

    [Theory]
    [InlineData("x-rayed: {lot: D, units: [1, 2], on: 2026-10-01}", "x-rayed: {lot: D, units: [2], on: 2026-10-03}", "Unit 2 of lot D")]
    [InlineData("x-rayed: {lot: D, on: 2026-10-01}", "x-rayed: {lot: D, units: [2], on: 2026-10-03}", "Unit 2 of lot D")]
    [InlineData("x-rayed: {lot: D, units: [1], on: 2026-10-01}", "x-rayed: {short-end-of: R1, on: 2026-10-03}", "Short end R1-SE")]
    [InlineData("x-rayed: {lot: D, on: 2026-10-01}", "x-rayed: {lot: D, units: [2, 1], on: 2026-10-03}", "Lot D")]
    public void Passes_add_up_by_film_and_not_by_entry(string first, string second, string twice)
    {
        Assert.Contains($"{twice}: X-rayed 2 times", Found(first, second));
        Assert.Equal([$"{twice}: X-rayed 2 times"], Found(1, first, second));
    }

    [Fact]
    public void A_can_that_is_in_no_book_is_flagged_by_its_entry() =>
        Assert.Equal(["Unit 9 of lot D: X-rayed once"], Found("x-rayed: {lot: D, units: [9], on: 2026-10-01}"));

    static IEnumerable<string> Found(params string[] entries) => Found(0, entries);

    static IEnumerable<string> Found(int letPass, params string[] entries) =>
        Run(letPass, entries).Findings.Where(f => f.Check == "stock/x-rayed").Select(f => f.Message);

    static WholeRun Run(int letPass, string[] entries) =>
        WholeRun.Of(
            TextFiles.OneFile(
                $$"""
                spoolbook: 1
                title: The Ferry Light
                code: FERRY
                rules: {tolerances: {x-ray-passes: {{letPass}} } }
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
        );
}
