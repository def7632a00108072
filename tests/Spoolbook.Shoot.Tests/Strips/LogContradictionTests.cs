using Spoolbook.Film;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Strips;

/// <summary>What a log says that film in a camera cannot have done, and what just fits. A foot is 40 frames.</summary>
public class LogContradictionTests
{
    [Fact]
    public void Film_is_wound_back_and_never_on() =>
        AssertOnly(Of(At(30)).Take("1A/1", to: At(10)).Rewind(At(12)), ContradictionKind.WoundForward, At(12), At(10));

    [Fact]
    public void A_rewind_to_where_the_film_stands_moves_nothing_and_contradicts_nothing() =>
        AssertNone(Of(At(30)).Take("1A/1", to: At(10)).Rewind(At(10)));

    [Fact]
    public void Film_is_run_off_onwards() =>
        AssertOnly(Of(At(30)).Take("1A/1", to: At(10)).RunOff(At(9)), ContradictionKind.BehindStand, At(9), At(10));

    [Fact]
    public void A_run_off_to_where_the_film_stands_contradicts_nothing() => AssertNone(Of(At(30)).Take("1A/1", to: At(10)).RunOff(At(10)));

    [Fact]
    public void A_take_ends_after_it_starts() =>
        AssertOnly(
            Of(At(30)).Take("1A/1", to: At(10)).Take("1A/2", from: At(12), to: At(11)),
            ContradictionKind.EndsBeforeStart,
            At(11),
            At(12)
        );

    [Fact]
    public void A_take_that_starts_where_the_film_stands_contradicts_nothing() =>
        AssertNone(Of(At(30)).Take("1A/1", to: At(10)).Take("1A/2", from: At(10), to: At(30)).Rewind(At(0)));

    // The door opens at 1+00 = 40 and takes 1+20 = 60 frames before the gate with it: 20 more than there are.
    [Fact]
    public void Light_reaches_no_film_before_the_head() =>
        AssertOnly(Of(At(30)).Take("1A/1", to: At(1)).Fog(At(1, 20), At(2)), ContradictionKind.BeforeHead, Frames(-20), At(0));

    [Fact]
    public void Light_reaches_no_film_beyond_the_end() =>
        AssertOnly(Of(At(30)).Take("1A/1", to: At(29)).Fog(At(1), At(2)), ContradictionKind.BeyondEnd, At(31), At(30));

    [Fact]
    public void Threading_again_loses_no_more_film_than_there_is() =>
        AssertOnly(Of(At(30)).Take("1A/1", to: At(29)).Reload(lost: At(2)), ContradictionKind.BeyondEnd, At(31), At(30));

    [Fact]
    public void A_tail_is_no_longer_than_the_roll()
    {
        AssertOnly(Of(At(30)).Take("1A/1", to: At(20)).Unload(tail: At(31)), ContradictionKind.BeyondEnd, At(31), At(30));
        AssertNone(Of(At(30)).Unload(tail: At(30)));
    }

    [Fact]
    public void A_head_is_no_longer_than_the_roll()
    {
        AssertOnly(Of(At(30)).Head(At(31)), ContradictionKind.BeyondEnd, At(31), At(30));
        AssertNone(Of(At(30)).Head(At(30)));
    }

    // Common practice: light gets in where the shutter stood open while the film was wound back, or where it ran on with no
    // cap on the lens; in a changing bag there is no light, and what is not written down is not supposed.
    [Theory]
    [InlineData(false, null, true)]
    [InlineData(false, false, true)]
    [InlineData(false, true, false)]
    [InlineData(true, null, false)]
    [InlineData(null, null, false)]
    public void A_rewind_lets_light_in_through_an_open_shutter_unless_it_was_in_the_dark(bool? closed, bool? inDark, bool lit)
    {
        var strip = Of(At(30)).Take("1A/1", to: At(20)).Rewind(At(15), shutterClosed: closed, inDark: inDark).Strip();

        Assert.Equal(lit ? [new Span(At(15), At(20))] : [], strip.Stray.Select(s => s.Span));
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(null, false)]
    public void Film_run_on_sees_light_only_without_a_cap(bool? capped, bool lit)
    {
        var strip = Of(At(30)).Take("1A/1", to: At(20)).Rewind(At(10)).RunOff(At(15), capped).Strip();

        Assert.Equal(lit ? [new Span(At(10), At(15))] : [], strip.Stray.Select(s => s.Span));
    }

    [Fact]
    public void A_frame_that_is_not_on_the_roll_has_no_segment()
    {
        var strip = Of(At(30)).Take("1A/1", to: At(20)).Strip();

        Assert.Equal(At(30), strip.SegmentAt(At(30) - Frames(1)).Span.To);
        Assert.Throws<ArgumentOutOfRangeException>(() => strip.SegmentAt(At(30)));
        Assert.Throws<ArgumentOutOfRangeException>(() => strip.SegmentAt(Frames(-1)));
        Assert.Single(strip.SegmentsOver(new Span(At(0), At(20))));
    }

    static void AssertOnly(Sheets.Sheet sheet, ContradictionKind kind, Footage at, Footage limit)
    {
        var slip = Assert.Single(sheet.Strip().Contradictions);
        Assert.Equal((kind, at, limit), (slip.Kind, slip.At, slip.Limit));
    }

    static void AssertNone(Sheets.Sheet sheet) => Assert.Empty(sheet.Strip().Contradictions);
}
