using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

public class StockDaysTests
{
    static readonly Sheet Overnight = Of(At(100))
        .FromUnit(1)
        .LoadedOn(Friday)
        .Head(At(4))
        .Take("7A/1", At(30))
        .Take("7B/1", At(60), also: t => t with { On = Written(Saturday) })
        .Unload(At(2))
        .OutOn(Saturday);

    static StockDay On(DateOnly day, Production production) => production.Stock().Days.Single(d => d.On == day);

    [Fact]
    public void A_roll_left_in_the_camera_overnight_is_shared_between_its_days()
    {
        var production = SmallProduction.Of(Overnight);
        Assert.Equal(At(26), On(Friday, production).Use.Tally.Good);
        Assert.Equal(At(4), On(Friday, production).Use.Tally.Waste);
        Assert.Equal(At(30), On(Saturday, production).Use.Tally.Good);
        Assert.Equal(At(2), On(Saturday, production).Use.Tally.Waste);
    }

    [Fact]
    public void In_the_evening_film_is_sealed_in_the_camera_or_in_a_short_end()
    {
        var production = SmallProduction.Of(Overnight);
        Assert.Equal((At(300), At(70)), (On(Friday, production).OnHand, On(Friday, production).InCamera));
        Assert.Equal((At(338), At(0)), (On(Saturday, production).OnHand, On(Saturday, production).InCamera));
        Assert.Equal((At(0), At(38)), (On(Friday, production).ShortEndsMade, On(Saturday, production).ShortEndsMade));
    }

    [Fact]
    public void A_day_on_the_plan_with_nothing_shot_is_still_in_the_book()
    {
        var small = SmallProduction.Of(Overnight);
        var planned = small with { Days = [new ShootingDay(small.Place, Written(3), Written(Sunday), null, null)] };
        var idle = On(Sunday, planned);
        Assert.Equal((3, 0, At(338)), (idle.Day?.Number.Value, idle.Use.Takes, idle.Left));
    }

    [Fact]
    public void To_date_adds_the_days_up() => Assert.Equal(At(56), On(Saturday, SmallProduction.Of(Overnight)).ToDate.Good);
}
