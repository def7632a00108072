using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Stock;

public class TallyTests
{
    // 4 ft of head, 20 good, 10 on hold, 5 no good, 3 of a test, and 58 left over.
    static readonly Sheet _roll = Of(At(100))
        .Head(At(4))
        .Take("1A/1", At(24))
        .Take("1A/2", At(34), mark: Mark.Hold)
        .Take("1A/3", At(39), mark: Mark.NoGood)
        .Take("T/1", At(42), mark: Mark.Test);

    [Fact]
    public void Film_run_in_takes_is_what_was_good_held_no_good_and_tests()
    {
        Assert.Equal((At(38), At(42)), (_roll.Tally().Shot, _roll.Tally().Exposed));
        Assert.Equal(At(100), _roll.Tally().Loaded);
    }

    [Fact]
    public void An_end_that_was_thrown_away_is_not_in_the_can()
    {
        Assert.Equal((At(42), At(58)), (_roll.Unload().Tally().InCan, _roll.Unload().Tally().ShortEnd));

        var thrown = _roll.Unload(left: Remainder.Thrown).Tally();
        Assert.Equal((At(42), At(100)), (thrown.InCan, thrown.Exposed));
    }

    [Fact]
    public void Two_rolls_together_have_the_film_of_both_in_every_account()
    {
        var both = _roll.Tally() + Of(At(50)).Head(At(1)).Take("1A/4", At(11)).Tally();

        Assert.Equal((At(30), At(10), At(5), At(97)), (both.Good, both.Hold, both.NoGood, both.ShortEnd));
        Assert.Equal((At(5), At(3)), (both.WastedBy(WasteCause.Head), both.WastedBy(WasteCause.Test)));
        Assert.Equal(At(150), both.Loaded);
    }

    [Fact]
    public void Tallies_are_the_same_where_every_account_is()
    {
        var one = new Tally { Good = At(20) }.With(Account.Waste, WasteCause.Head, At(4));

        Assert.Equal(one, new Tally { Good = At(20) }.With(Account.Waste, WasteCause.Head, At(4)));
        Assert.NotEqual(one, one with { Good = At(20, 1) });
        Assert.NotEqual(one, one with { ShortEnd = Frames(1) });
        Assert.NotEqual(one, new Tally { Good = At(20) }.With(Account.Waste, WasteCause.Tail, At(4)));
        Assert.False(one.Equals(null));
    }
}
