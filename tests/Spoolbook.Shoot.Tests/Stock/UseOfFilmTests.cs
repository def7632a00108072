using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Stock;

public class UseOfFilmTests
{
    // 4 ft of head, 20 ft no good, 40 ft good, 36 ft left over.
    static readonly Sheet Shot = Of(At(100)).FromUnit(1).Head(At(4)).Take("7B/1", At(24), mark: Mark.NoGood).Take("7B/2", At(64)).Unload();

    static UseOfFilm UseOf(Production production) => production.Stock().Use;

    [Fact]
    public void Exposed_to_good_counts_waste_as_film_that_was_paid_for() =>
        Assert.Equal(new Ratio(64, 40), UseOf(SmallProduction.Of(Shot)).ExposedToGood);

    [Fact]
    public void Exposed_to_planned_goes_by_the_planned_running_time()
    {
        // 64 ft exposed are 2560 frames; 40 s at 24 frames a second are 960.
        var planned = SmallProduction.Of(Shot) with { RunningTime = Written((Ratio)40) };
        Assert.Equal(new Ratio(2560, 960), UseOf(planned).ExposedToPlanned);
        Assert.Null(UseOf(SmallProduction.Of(Shot)).ExposedToPlanned);
    }

    [Fact]
    public void Screen_time_is_good_film_at_the_projection_speed()
    {
        // 40 ft of 16 mm are 1600 frames: 66 2/3 s at 24 (common practice: 36 ft a minute).
        Assert.Equal(new Ratio(200, 3), UseOf(SmallProduction.Of(Shot)).ScreenTime);
        Assert.Equal(100, UseOf(SmallProduction.Of(Shot) with { ProjectedAt = new Speed(16) }).ScreenTime);
    }

    [Fact]
    public void Two_takes_of_one_shot_are_two_takes_a_shot() => Assert.Equal(2, UseOf(SmallProduction.Of(Shot)).TakesAShot);

    [Fact]
    public void The_waste_rate_is_waste_to_film_exposed() => Assert.Equal(new Ratio(4, 64), UseOf(SmallProduction.Of(Shot)).WasteRate);

    [Fact]
    public void Before_anything_is_shot_no_ratio_is_made_up()
    {
        var use = UseOf(SmallProduction.Of());
        Assert.Null(use.ExposedToGood);
        Assert.Null(use.TakesAShot);
        Assert.Null(use.WasteRate);
    }

    [Fact]
    public void Scenes_come_in_the_order_in_which_a_reader_counts_and_film_of_none_last()
    {
        var stock = SmallProduction.Of(Of(At(100)).FromUnit(1).Take("10/1", At(10)).Take("7/1", At(30)).Take("9/1", At(35))).Stock();
        Assert.Equal([("7", At(20)), ("9", At(5)), ("10", At(10)), (null, At(0))], stock.Scenes.Select(s => (s.Name, s.Use.Tally.Good)));
    }
}
