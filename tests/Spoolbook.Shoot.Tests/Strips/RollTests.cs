using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Strips;

/// <summary>Rolls worked out by hand. A foot is 40 frames.</summary>
public class RollTests
{
    // 100+00 loaded. Head 4+00; take to 20+00; then the door opens: 1+20 before the gate and 2+00 behind it are
    // lost, 18+20 to 22+00. Run off to 22+00, take to 40+00, unloaded with a tail of 2+00; 58+00 left.
    // G: (18+20 - 4+00) + (40+00 - 22+00) = 14+20 + 18+00 = 32+20. W: head 4+00, fog 3+20, tail 2+00.
    // 32+20 + 4+00 + 3+20 + 2+00 + 58+00 = 100+00.
    [Fact]
    public void Fog_in_mid_roll_takes_the_film_on_both_sides_of_the_gate()
    {
        var book = Of(At(100))
            .Head(At(4))
            .Take("7A/1", to: At(20))
            .Fog(At(1, 20), At(2))
            .RunOff(At(22))
            .Take("7A/2", to: At(40))
            .Unload(tail: At(2))
            .Book();

        Assert.Equal(new Span(At(18, 20), At(22)), Assert.Single(book.Strip.Fogged));
        Assert.Equal(At(32, 20), book.Tally.Good);
        Assert.Equal(At(4), book.Tally.WastedBy(WasteCause.Head));
        Assert.Equal(At(3, 20), book.Tally.WastedBy(WasteCause.Fog));
        Assert.Equal(At(0), book.Tally.WastedBy(WasteCause.RunOff));
        Assert.Equal(At(2), book.Tally.WastedBy(WasteCause.Tail));
        Assert.Equal(new Span(At(42), At(100)), book.Strip.Left);
        Assert.Equal(At(100), book.Tally.Loaded);
    }

    // Unloaded at 30+00 and threaded again: 1+00 lost, and the new zero is 2+00 farther down the film. The next take
    // starts at 31+00 on the film, where the dial now reads 29+00. It ends at 38+00 by the dial: 40+00 on the film. So
    // the take has 9+00, and not the 8+00 that a sheet read without the shift would give.
    [Fact]
    public void A_roll_reloaded_two_feet_off_is_read_from_its_new_zero()
    {
        var strip = Of(At(100)).Take("7A/1", to: At(30)).Reload(zeroMoved: At(2), lost: At(1), body: "B2").Take("7A/2", to: At(38)).Strip();

        Assert.Equal(new Span(At(31), At(40)), strip.Layers[1].Span);
        Assert.Equal("B2", strip.Layers[1].Body);
        Assert.Equal([WasteCause.Head], strip.Segments.Where(s => s.Cause is not null).Select(s => s.Cause!.Value));
        Assert.Equal(At(2), strip.Moves[^1].ZeroMoved);
        Assert.Equal(1, strip.Passes);
    }

    // Unloaded at 30+00, 1+00 lost. The new zero is 3+00 nearer the head, so the dial reads 34+00 where the film is at
    // 31+00; the take ends at 43+00 by the dial, 40+00 on the film. Common practice.
    [Fact]
    public void A_roll_reloaded_with_its_zero_nearer_the_head_reads_more_on_the_dial_than_is_on_the_film()
    {
        var strip = Of(At(100)).Take("7A/1", to: At(30)).Reload(zeroMoved: At(0) - At(3), lost: At(1)).Take("7A/2", to: At(43)).Strip();

        Assert.Equal(new Span(At(31), At(40)), strip.Layers[1].Span);
    }

    [Fact]
    public void A_roll_rewound_in_the_dark_and_shot_again_end_to_end_has_two_passes_and_no_short_end()
    {
        var book = Of(At(100))
            .Head(At(4))
            .Take("1A/1", to: At(98), exposed: -1)
            .Rewind(At(4), inDark: true)
            .Take("1B/1", to: At(98), exposed: -1)
            .RunOff(At(100))
            .Unload(tail: At(2))
            .Book();

        Assert.Equal(2, book.Strip.Passes);
        Assert.Equal(At(94), book.Tally.Good);
        Assert.Equal(At(2), book.Tally.WastedBy(WasteCause.Tail));
        Assert.True(book.Strip.Left.IsEmpty);
    }

    [Fact]
    public void The_worst_mark_counts_where_takes_overlap()
    {
        var book = Of(At(30)).Take("1A/1", to: At(10)).Rewind(At(6)).Take("1B/1", to: At(12), mark: Mark.NoGood).Book();

        Assert.Equal((At(6), At(6), At(18)), (book.Tally.Good, book.Tally.NoGood, book.Tally.ShortEnd));
        Assert.Equal("1B/1", book.Strip.SegmentAt(At(8)).Owner!.Take.Slate);
    }

    [Fact]
    public void Film_between_a_take_and_one_that_starts_farther_on_is_a_gap() =>
        Assert.Equal(At(3), Of(At(30)).Take("1A/1", to: At(10)).Take("1A/2", to: At(20), from: At(13)).Tally().WastedBy(WasteCause.Gap));

    [Fact]
    public void Film_left_over_and_thrown_away_is_waste()
    {
        var tally = Of(At(30)).Take("1A/1", to: At(20)).Unload(tail: At(2), left: Remainder.Thrown).Tally();

        Assert.Equal((At(0), At(8)), (tally.ShortEnd, tally.WastedBy(WasteCause.End)));
    }

    // Rewound to 10+00 for another try, and unloaded there: the tail is lost at the gate, over take 1.
    [Fact]
    public void A_roll_unloaded_where_it_was_rewound_to_loses_its_tail_there()
    {
        var strip = Of(At(30)).Take("1A/1", to: At(20)).Rewind(At(10)).Unload(tail: At(2)).Strip();

        Assert.Equal(WasteCause.Tail, strip.SegmentAt(At(11)).Cause);
        Assert.Equal(Account.Good, strip.SegmentAt(At(15)).Account);
        Assert.Equal(new Span(At(20), At(30)), strip.Left);
    }

    [Fact]
    public void A_take_that_ran_out_of_film_is_trimmed_and_reported()
    {
        var strip = Of(At(30)).Take("1A/1", to: At(33)).Strip();

        Assert.Equal(new Span(At(0), At(30)), strip.Layers[0].Span);
        Assert.Equal(new Span(At(0), At(33)), strip.Layers[0].Written);
        var slip = Assert.Single(strip.Contradictions);
        Assert.Equal((ContradictionKind.BeyondEnd, At(33), At(30)), (slip.Kind, slip.At, slip.Limit));
    }

    [Theory]
    [InlineData(12, 5, ContradictionKind.BehindStand)]
    [InlineData(-3, 12, ContradictionKind.BeforeHead)]
    public void A_take_written_where_the_film_was_not_is_reported(int from, int to, ContradictionKind expected)
    {
        var strip = Of(At(30)).Take("1A/1", to: At(20)).Take("1A/2", to: At(to), from: At(from)).Strip();

        Assert.Contains(strip.Contradictions, s => s.Kind == expected);
    }

    [Fact]
    public void Film_rewound_with_the_shutter_open_sees_light_twice()
    {
        var stray = Assert.Single(
            Of(At(30)).Take("1A/1", to: At(10)).Take("1A/2", to: At(20)).Rewind(At(15), shutterClosed: false).Strip().Stray
        );

        Assert.Equal(new Span(At(15), At(20)), stray.Span);
        Assert.Equal("1A/2", Assert.Single(stray.Layers).Take.Slate);
    }
}
