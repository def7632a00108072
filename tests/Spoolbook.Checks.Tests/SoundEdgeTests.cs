using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Reading.Files;

namespace Spoolbook.Checks.Tests;

/// <summary>Sync, sound rolls and slates, of one take and of several.</summary>
public class SoundEdgeTests
{
    const string In = "sync: yes, sound-roll: S1, slate: head";

    [Theory]
    [InlineData(new[] { In, In, "sync: no" }, "Take 1A/3 is not in sync and 1A/1 is, and nothing says why")]
    [InlineData(new[] { "sync: no", "sync: no", In }, "Take 1A/3 is in sync and 1A/1 is not, and nothing says why")]
    [InlineData(new[] { In, "sync: no" }, "Take 1A/2 is not in sync and 1A/1 is, and nothing says why")] // as many each: the first
    [InlineData(new[] { "sync: no", In }, "Take 1A/2 is in sync and 1A/1 is not, and nothing says why")]
    [InlineData(new[] { "sync: no", In, In }, "Take 1A/1 is not in sync and 1A/2 is, and nothing says why")]
    public void The_take_that_is_not_as_the_others_is_flagged(string[] takes, string says) =>
        Assert.Equal([says], Found("sound/sync-changed", takes));

    [Theory]
    [InlineData(In, In)]
    [InlineData(In, "sync: no, note: Recorder out of tape")]
    [InlineData("sync: no, note: Camera test", "sync: no, note: Camera test", In)]
    [InlineData(In, "mute: yes")]
    public void Takes_alike_and_takes_with_a_reason_are_not(params string[] takes) => Assert.Empty(Found("sound/sync-changed", takes));

    // Of two takes without sync, the note on one says why the third is in sync.
    [Fact]
    public void One_note_among_the_takes_without_sync_is_reason_enough() =>
        Assert.Empty(Found("sound/sync-changed", ["sync: no", "sync: no, note: Recorder late", In]));

    [Theory]
    [InlineData(new[] { "sync: yes, slate: head" }, "Take 1A/1 is in sync, but has no sound roll")]
    [InlineData(new[] { "sync: yes, slate: head", "sync: yes, slate: head" }, "Takes 1A/1 and 1A/2 are in sync, but have no sound roll")]
    public void A_take_in_sync_without_a_sound_roll_is_flagged(string[] takes, string says) =>
        Assert.Equal([says], Found("sound/no-sound-roll", takes));

    [Theory]
    [InlineData(new[] { "sync: yes, sound-roll: S1" }, "Take 1A/1 is in sync, but the log does not say where its slate is")]
    [InlineData(
        new[] { "sync: yes, sound-roll: S1", "sync: yes" },
        "Takes 1A/1 and 1A/2 are in sync, but the log does not say where their slates are"
    )]
    public void A_take_in_sync_without_its_slate_is_flagged(string[] takes, string says) =>
        Assert.Equal([says], Found("sound/tail-slate-not-written", takes));

    static IEnumerable<string> Found(string check, string[] takes) =>
        WholeRun
            .Of(
                TextFiles.OneFile(
                    $$"""
                    spoolbook: 1
                    title: The Ferry Light
                    code: FERRY
                    bodies: [{body: B1, speeds: [24], shutter: 180, takes: 100ft}]
                    motors: [{motor: E1, speeds: [24], sync: yes}]
                    lots: [{lot: D, stock: 50 D, ei: 50, balance: daylight, process: ecn-2, length: 100ft, units: 1}]
                    rolls:
                      - roll: R1
                        lot: D
                        unit: 1
                        body: B1
                        load: {on: 2026-10-02 09:00, light: dark, head: 4+00, speed-after: 24}
                        log:
                    {{string.Join(
                        '\n',
                        takes.Select(
                            (t, i) =>
                                $"      - take: {{scene: 1, shot: A, take: {i + 1}, to: {10 * (i + 1)}+00, motor: E1, mark: good, {t}}}"
                        )
                    )}}
                    """
                )
            )
            .Findings.Where(f => f.Check == check)
            .Select(f => f.Message);
}
