using CsCheck;

namespace Spoolbook.Film.Tests;

public class TimeLapseTests
{
    // F9 H: J. Carucci, filming guide: 3 h in 30 s at 30 frames a second is 12 s a frame.
    [Fact]
    public void The_interval_is_the_event_over_the_frames()
    {
        var lapse = TimeLapse.Solve(new Speed(30), @event: 10_800, screenTime: 30).Value;

        Assert.Equal(12, lapse.Interval);
        Assert.Equal(900, lapse.Frames.Frames);
        Assert.Equal(360, lapse.ApparentSpeed);
    }

    // F10 H: worked example: an hour at a frame each 10 s.
    [Theory]
    [InlineData(24, 15)]
    [InlineData(25, 14.4)]
    public void An_hour_at_ten_seconds_a_frame(int projection, double screen)
    {
        var lapse = TimeLapse.Solve(new Speed(projection), interval: 10, @event: 3600).Value;

        Assert.Equal(360, lapse.Frames.Frames);
        Assert.Equal(screen, lapse.ScreenTime.ToDouble());
    }

    [Fact]
    public void An_event_that_ends_between_two_exposures_drops_the_rest()
    {
        var lapse = TimeLapse.Solve(Speed.Normal, interval: 10, @event: 99).Value;

        Assert.Equal(9, lapse.Frames.Frames);
        Assert.Equal(90, lapse.Event);
    }

    [Fact]
    public void Any_two_give_the_rest() =>
        Gen.Select(Gen.Int[1, 600], Gen.Int[1, 5000], Gen.Int[1, 60])
            .Sample(
                (tenths, frames, projection) =>
                {
                    var speed = new Speed(projection);
                    var (interval, length) = (new Ratio(tenths, 10), new Footage(frames));
                    var (total, screen) = (interval * frames, length.Seconds(speed));
                    var whole = new TimeLapse(interval, total, length, screen);
                    return TimeLapse.Solve(speed, interval, frames: length).Value == whole
                        && TimeLapse.Solve(speed, interval, screenTime: screen).Value == whole
                        && TimeLapse.Solve(speed, interval, total).Value == whole
                        && TimeLapse.Solve(speed, @event: total, frames: length).Value == whole
                        && TimeLapse.Solve(speed, @event: total, screenTime: screen).Value == whole
                        && TimeLapse.Solve(speed, interval, total, length, screen).Value == whole;
                }
            );

    [Fact]
    public void What_is_missing_or_wrong_has_a_name()
    {
        Assert.Equal(TimeLapseFault.TooLittleKnown, TimeLapse.Solve(Speed.Normal, interval: 10).Fault);
        Assert.Equal(TimeLapseFault.TooLittleKnown, TimeLapse.Solve(Speed.Normal, frames: new Footage(24), screenTime: 1).Fault);
        Assert.Equal(
            TimeLapseFault.FramesAgainstTime,
            TimeLapse.Solve(Speed.Normal, interval: 10, frames: new Footage(24), screenTime: 2).Fault
        );
        Assert.Equal(
            TimeLapseFault.IntervalsAgainstEvent,
            TimeLapse.Solve(Speed.Normal, interval: 10, @event: 100, frames: new Footage(9)).Fault
        );
        Assert.Equal(TimeLapseFault.EventBeforeInterval, TimeLapse.Solve(Speed.Normal, interval: 10, @event: 9).Fault);
        Assert.Equal(TimeLapseFault.NotAboveZero, TimeLapse.Solve(Speed.Normal, interval: 0, @event: 9).Fault);
        Assert.Equal(TimeLapseFault.NotAboveZero, TimeLapse.Solve(Speed.Normal, interval: 1, @event: -9).Fault);
        Assert.Equal(TimeLapseFault.NotAboveZero, TimeLapse.Solve(Speed.Normal, interval: 1, frames: Footage.Zero).Fault);
        Assert.Equal(TimeLapseFault.NotAboveZero, TimeLapse.Solve(Speed.Normal, interval: 1, screenTime: new Ratio(1, 100)).Fault);
        Assert.Equal(TimeLapseFault.NotAboveZero, TimeLapse.Solve(Speed.Normal, @event: 1, frames: new Footage(24), screenTime: 0).Fault);
    }

    [Fact]
    public void The_longest_exposure_leaves_time_to_move_the_film()
    {
        var lapse = TimeLapse.Solve(Speed.Normal, interval: 2, frames: new Footage(24)).Value;

        Assert.Equal(new ExposureTime(new Ratio(7, 4)), lapse.LongestExposure(new Ratio(1, 4)));
        Assert.Null(lapse.LongestExposure(2));
    }

    [Theory]
    [InlineData(48, 1, 48, 24)]
    [InlineData(48, 2, 96, 12)]
    [InlineData(48, 3, 144, 8)]
    public void Animation_on_ones_twos_and_threes(long drawings, int each, long frames, int perSecond)
    {
        Assert.Equal(frames, SingleFrames.FilmFor(drawings, each).Frames);
        Assert.Equal(drawings, SingleFrames.DrawingsFor(new Footage(frames), each));
        Assert.Equal(perSecond, SingleFrames.DrawingsPerSecond(Speed.Normal, each));
    }

    [Fact]
    public void The_last_drawing_may_be_held_short() => Assert.Equal(13, SingleFrames.DrawingsFor(new Footage(25), 2));

    [Fact]
    public void A_drawing_takes_a_frame_at_least()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleFrames.FilmFor(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleFrames.FilmFor(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleFrames.DrawingsFor(new Footage(1), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleFrames.DrawingsPerSecond(Speed.Normal, 0));
    }

    // F4 H: Cine-Kodak Special II, p. 28: 40 frames are about 2½ s at 16, 60 are 3¾ s.
    [Theory]
    [InlineData(40, 2.5)]
    [InlineData(60, 3.75)]
    public void An_in_camera_dissolve_lasts_so_long_at_16(long frames, double seconds) =>
        Assert.Equal(seconds, new Footage(frames).Seconds(new Speed(16)).ToDouble());

    // F5 H: Cine-Kodak Special II, p. 28: turns of an 8-frame shaft for each second of film.
    [Theory]
    [InlineData(16, 2)]
    [InlineData(24, 3)]
    public void Rewinding_a_second_takes_so_many_turns_of_an_eight_frame_shaft(int speed, int turns) =>
        Assert.Equal(turns, SingleFrames.DrawingsPerSecond(new Speed(speed), 8));

    [Fact]
    public void An_event_of_one_interval_is_one_frame() =>
        Assert.Equal(1, TimeLapse.Solve(Speed.Normal, interval: 10, @event: 10).Value.Frames.Frames);

    [Fact]
    public void An_event_of_nothing_is_no_event() =>
        Assert.Equal(TimeLapseFault.NotAboveZero, TimeLapse.Solve(Speed.Normal, interval: 10, @event: 0).Fault);

    // Common practice: single frames are exposed at the time of a turn at 8 frames a second (D6 H: a camera manual says "as at 8").
    [Fact]
    public void A_camera_moves_a_single_frame_as_at_eight() => Assert.Equal(new Ratio(1, 8), TimeLapse.UsualTransport);
}
