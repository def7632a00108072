using System.Collections.Immutable;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Strips;

/// <summary>The two counters, with the arithmetic written out. A foot is 40 frames.</summary>
public class CounterTests
{
    // The dial reads 1 ft too much at 50 ft and 2 ft too much at 100 ft: 2 ft in 100, and both are on the line.
    [Fact]
    public void A_dial_that_runs_away_evenly_has_a_drift_and_no_residual()
    {
        var drift = Dial.DriftOver(
            Of(At(110)).Take("1A/1", to: At(50)).Read(dial: At(51)).Take("1A/2", to: At(100)).Read(dial: At(102)).Strip()
        )!;

        Assert.Equal(2, drift.Drift, 1e-9);
        Assert.Equal(0, drift.Residual, 1e-9);
        Assert.Equal([40L, 80L], drift.Readings.Select(r => r.Off.Frames));
    }

    // Errors of 0 at 50 ft and 1 ft at 100 ft: the slope is (0*50 + 1*100)/(50*50 + 100*100) = 100/12500 = 0.008, 0.8
    // ft in 100; at 50 ft the line says 0.4 ft, so the reading is 0.4 ft = 16 frames below, and 8 above at 100 ft.
    [Fact]
    public void A_dial_that_jumps_shows_how_far_it_is_off_its_own_line()
    {
        var drift = Dial.DriftOver(
            Of(At(110)).Take("1A/1", to: At(50)).Read(dial: At(50)).Take("1A/2", to: At(100)).Read(dial: At(101)).Strip()
        )!;

        Assert.Equal(0.8, drift.Drift, 1e-9);
        Assert.Equal(-16, drift.Residual, 1e-9);
    }

    [Fact]
    public void A_dial_without_readings_has_no_drift() => Assert.Null(Dial.DriftOver(Of(At(100)).Take("1A/1", to: At(50)).Strip()));

    // Zeroed at the start of 7A/1, 4+00 = 160. Its end, 13+00 = 520, reads 360; wound back to 11+32 = 472 it reads 312.
    [Fact]
    public void A_counter_zeroed_before_the_pass_reads_from_the_start_of_the_take() =>
        Assert.All(ReadingsOf(DissolveRead(360, 312)), r => Assert.Equal((r.Read, 0L), (r.Expected!.Value, r.Off)));

    [Fact]
    public void A_rewind_twelve_frames_short_is_flagged_once()
    {
        var sheet = DissolveRead(360, 324).Take("7B/1", to: At(21, 32)).Read(counter: 724);

        Assert.Equal([0L, 12L, 0L], ReadingsOf(sheet).Select(r => r.Off));
    }

    // 1000 frames on a counter that comes round at 1000: 1010 frames after its zero it reads 10. 996 is 14 too few, not 986 too many.
    [Theory]
    [InlineData(10, 0)]
    [InlineData(996, -14)]
    public void A_counter_that_comes_round_is_read_the_short_way(long read, long off)
    {
        var sheet = Of(At(100)).Take("7A/1", to: Frames(1010)).Read(counter: read).Rewind(Frames(0), zeroed: true);

        var reading = Assert.Single(FrameCounter.Readings(Wrapping(sheet, 1000), sheet.Strip()));
        Assert.Equal((10L, off), (reading.Expected!.Value, reading.Off));
    }

    // Zeroed at the start of the take that the film was wound back into, 7A/2 at 10+00; 7A/1 had ended there.
    [Fact]
    public void A_counter_is_zeroed_at_the_take_that_is_shot_over_and_not_at_the_one_before_it()
    {
        var sheet = Of(At(100)).Take("7A/1", to: At(10)).Take("7A/2", to: At(13)).Rewind(At(10), zeroed: true).Read(counter: 0);

        Assert.Equal((0L, 0L), (Assert.Single(ReadingsOf(sheet)).Expected!.Value, ReadingsOf(sheet)[0].Off));
    }

    // Wound back twice: the second time into 7B/1, which starts at 5+00. 8+00 is 3+00 = 120 frames from there.
    [Fact]
    public void After_a_second_pass_the_counter_counts_from_that_pass()
    {
        var sheet = Of(At(100))
            .Take("7A/1", to: At(13))
            .Rewind(At(5), zeroed: true)
            .Take("7B/1", to: At(15))
            .Rewind(At(8), zeroed: true)
            .Read(counter: 120);

        Assert.Equal((120L, 0L), (Assert.Single(ReadingsOf(sheet)).Expected!.Value, ReadingsOf(sheet)[0].Off));
    }

    [Fact]
    public void Film_run_off_and_wound_back_gives_the_counter_no_zero()
    {
        var readings = ReadingsOf(Of(At(100)).RunOff(At(5)).Rewind(At(0), zeroed: true).Read(counter: 0));

        Assert.Null(Assert.Single(readings).Expected);
    }

    // The zero moved 2+00 down the film: 40+00 on it reads 38+00. Read before the new zero is past the gate, it says nothing.
    [Fact]
    public void A_dial_is_held_against_the_zero_that_it_has_now()
    {
        var sheet = Of(At(100)).Take("7A/1", to: At(30)).Reload(zeroMoved: At(2), lost: At(1)).Take("7A/2", to: At(38)).Read(dial: At(38));

        Assert.Equal(
            (At(38), 0L),
            (Dial.DriftOver(sheet.Strip())!.Readings[0].Strip, Dial.DriftOver(sheet.Strip())!.Readings[0].Off.Frames)
        );
        Assert.Null(Dial.DriftOver(Of(At(100)).Take("7A/1", to: At(0)).Read(dial: At(0)).Strip()));
    }

    [Fact]
    public void The_first_reading_of_a_counter_that_nobody_zeroed_gives_its_zero()
    {
        var readings = ReadingsOf(Of(At(100)).Take("7A/1", to: At(5)).Read(counter: 80).Take("7A/2", to: At(7)).Read(counter: 160));

        Assert.Equal([null, 160L], readings.Select(r => r.Expected));
    }

    [Fact]
    public void Threading_again_loses_the_counters_zero()
    {
        var readings = ReadingsOf(DissolveRead(360, 312).Reload(lost: At(1)).Take("7B/1", to: At(20)).Read(counter: 7));

        Assert.Null(readings[^1].Expected);
    }

    [Fact]
    public void A_pass_rewound_without_a_zeroed_counter_is_flagged()
    {
        var strip = Of(At(100)).Take("7A/1", to: At(13)).Rewind(At(11)).Take("7B/1", to: At(15)).Rewind(At(12), zeroed: true).Strip();

        Assert.Equal(At(11), Assert.Single(FrameCounter.NotZeroed(strip)).To.Value);
    }

    [Fact]
    public void A_roll_wound_back_out_of_the_camera_has_no_counter_to_zero() =>
        Assert.Empty(FrameCounter.NotZeroed(Of(At(100)).Take("7A/1", to: At(98)).Rewind(At(0), inDark: true).Strip()));

    [Fact]
    public void A_rewind_that_moves_no_film_starts_no_pass() =>
        Assert.Empty(FrameCounter.NotZeroed(Of(At(100)).Take("7A/1", to: At(13)).Rewind(At(13)).Strip()));

    static Sheet DissolveRead(long atEnd, long atRewind) =>
        Of(At(100))
            .Head(At(4))
            .Take("7A/1", to: At(13), fadeOut: Frames(48))
            .Read(counter: atEnd)
            .Rewind(At(11, 32), zeroed: true)
            .Read(counter: atRewind);

    static ImmutableArray<CounterReading> ReadingsOf(Sheet sheet) => FrameCounter.Readings(SmallProduction.Of(sheet), sheet.Strip());

    static Production Wrapping(Sheet sheet, long frames)
    {
        var production = SmallProduction.Of(sheet);
        return production with { Bodies = [.. production.Bodies.Select(b => b with { CounterWraps = Written(frames) })] };
    }
}
