using Spoolbook.Film;
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

    static readonly Place Nowhere = SmallProduction.Lot.Place;

    static readonly DateOnly Thursday = Friday.AddDays(-1);

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

    // 30 ft to 26 ft good; by Saturday 62 ft to 56 ft.
    [Fact]
    public void Exposed_to_good_to_date_is_unknown_until_there_is_good_film()
    {
        var production = Planned(SmallProduction.Of(Overnight), Thursday);

        Assert.Equal(
            [null, new Ratio(30, 26), new Ratio(62, 56)],
            production.Stock().Days.Select(d => d.ExposedToGoodToDate)
        );
    }

    [Fact]
    public void Film_that_can_still_be_shot_is_on_hand_and_in_the_camera() =>
        Assert.Equal(At(370), On(Friday, SmallProduction.Of(Overnight)).Left);

    [Fact]
    public void A_roll_is_not_in_the_camera_on_the_evening_before_it_is_loaded()
    {
        var eve = On(Thursday, Planned(SmallProduction.Of(Overnight), Thursday));

        Assert.Equal((At(400), At(0)), (eve.OnHand, eve.InCamera));
    }

    [Fact]
    public void A_lot_for_practice_is_on_hand_on_no_evening()
    {
        var small = SmallProduction.Of(Overnight);
        var dummy = SmallProduction.Lot with { Name = Written("DUMMY"), Practice = Written(true) };
        var shooting = SmallProduction.Lot with { Name = Written("BW-1"), Practice = Written(false), Units = Written(1) };

        Assert.Equal(At(400), On(Friday, small with { Lots = [.. small.Lots, dummy, shooting] }).OnHand);
    }

    [Fact]
    public void What_came_and_what_went_is_on_its_day()
    {
        var stock = With(
            [],
            Units(new StockSentAway(Nowhere) { On = When(Friday) }, 1, 2),
            Units(new StockCame(Nowhere) { On = When(Saturday) }, 5),
            Units(new StockRecanned(Nowhere) { On = When(Saturday), Off = Written(At(3)) }, 4)
        )
            .Stock();

        Assert.Equal(
            [(Friday, At(0), At(200), At(200)), (Saturday, At(100), At(3), At(297))],
            stock.Days.Select(d => (d.On, d.Came, d.Went, d.OnHand))
        );
    }

    // B1 cans 50 ft on Friday, and 38 ft on Sunday, when B2 shoots for the second unit.
    [Fact]
    public void A_day_of_two_units_is_counted_camera_by_camera()
    {
        var friday = Of(At(100)).FromUnit(1).LoadedOn(Friday).Take("7A/1", At(50)).Unload().OutOn(Friday);
        var second = Of(At(100), "R02").FromUnit(2).Take("9A/1", At(30));
        var first = Of(At(100), "R03").FromUnit(3).Head(At(4)).Take("7B/1", At(60)).Unload(At(2));
        var production = Planned(
            SmallProduction.Of(friday, new Sheet(second.Roll with { Body = Written("B2") }), first),
            Friday,
            Sunday,
            Sunday
        );

        Assert.Empty(On(Friday, production).Units);
        Assert.Equal(
            [("B1", At(100), At(38), At(62), 1), ("B2", At(100), At(0), At(30), 1)],
            On(Sunday, production).Units.Select(u => (u.Body, u.Loaded, u.ShortEndsMade, u.Use.Tally.Exposed, u.Use.Takes))
        );
    }

    // Shot on Friday, nothing on Saturday, out of the book on Sunday, shot on Monday.
    [Fact]
    public void A_day_out_of_the_book_is_that_on_which_film_was_exposed_last()
    {
        var monday = Of(At(100), "R02").FromUnit(2).LoadedOn(Monday).Take("8A/1", At(20), also: t => t with { On = Written(Monday) });
        var friday = Of(At(100)).FromUnit(1).LoadedOn(Friday).Take("7A/1", At(50)).Unload().OutOn(Friday);
        var stock = Planned(SmallProduction.Of(friday, monday), Saturday).Stock();

        Assert.Equal(
            [null, Friday, Saturday, Friday, Monday, Monday],
            Enumerable.Range(0, 6).Select(i => stock.DayAt(Thursday.AddDays(i))?.On)
        );
    }

    static Production Planned(Production production, params DateOnly[] days) =>
        production with
        {
            Days = [.. days.Select((d, i) => new ShootingDay(Nowhere, Written(i + 1), Written(d), null, null))],
        };
}
