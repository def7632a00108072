using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using Spoolbook.Shoot.Walks;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Strips;

/// <summary>A roll's log followed once: the shooting day of everything, and where the film was.</summary>
public class WalkTests
{
    static readonly DateOnly First = FirstDay;
    static readonly DateOnly Second = FirstDay.AddDays(1);
    static readonly DateOnly Third = FirstDay.AddDays(2);

    static readonly Sheet OverTwoDays = Of(At(100))
        .FromUnit(1)
        .LoadedOn(StockSheets.Friday)
        .Head(At(4))
        .Take("7A/1", At(14))
        .Take("7B/1", At(24), also: t => t with { On = Written(StockSheets.Saturday), At = Written(new TimeOnly(9, 0)) })
        .RunOff(At(100))
        .AtHour(9, 40)
        .Unload(At(2), on: StockSheets.Saturday.ToDateTime(new TimeOnly(10, 0)));

    [Fact]
    public void A_roll_finished_on_the_next_morning_stood_in_the_camera_in_the_evening()
    {
        var days = SmallProduction.Of(OverTwoDays).Stock().Days;
        var (evening, next) = (days.Single(d => d.On == StockSheets.Friday), days.Single(d => d.On == StockSheets.Saturday));
        Assert.Equal((At(14), At(86)), (evening.Use.Tally.Exposed, evening.InCamera));
        Assert.Equal((At(86), At(0)), (next.Use.Tally.Exposed, next.InCamera));
    }

    [Fact]
    public void What_has_no_date_is_of_the_day_of_the_entry_before_it() =>
        AssertDays(
            [First, Second, Second, Second, Second],
            Of(At(100))
                .Take("1A/1", At(10))
                .Take("1B/1", At(20))
                .At(10, on: 1)
                .Take("1C/1", At(30))
                .Fog(At(1), At(1))
                .RunOff(At(100))
                .At(16)
        );

    [Fact]
    public void The_small_hours_after_a_late_one_are_the_night_of_the_same_day()
    {
        var walk = Walk(
            Of(At(100))
                .Take("1A/1", At(10))
                .At(23)
                .Take("1B/1", At(20))
                .At(1)
                .Fog(At(1), At(1))
                .At(2)
                .Reload(on: Night(3))
                .RunOff(At(100))
                .At(5)
                .Unload(At(2), on: Night(5))
        );
        Assert.All(walk.All, m => Assert.Equal(First, m.Day));
        Assert.Equal([Night(1), Night(2), Night(3), Night(5)], walk.Moments.Skip(1).Select(m => m.When));
    }

    [Fact]
    public void Six_in_the_morning_is_no_night()
    {
        var walk = Walk(Of(At(100)).Take("1A/1", At(10)).At(23).Unload(At(2), on: Night(6)));
        Assert.Equal(Second, walk.TakingOut?.Day);
    }

    [Fact]
    public void A_night_shoot_that_runs_on_after_sunrise_is_one_shooting_day()
    {
        var walk = Walk(
            Of(At(100))
                .Take("1A/1", At(10))
                .At(23)
                .Take("1B/1", At(20))
                .At(5)
                .Take("1C/1", At(30))
                .At(6)
                .Take("1D/1", At(40))
                .At(8)
                .Unload(At(2), on: Night(9))
        );
        Assert.All(walk.All, m => Assert.Equal(First, m.Day));
        Assert.Equal([Night(5), Night(6), Night(8), Night(9)], walk.Moments.Skip(1).Select(m => m.When).Append(walk.TakingOut!.When));
    }

    // Common practice: a crew that was sent home is not back within three hours.
    [Fact]
    public void The_morning_after_a_nights_rest_is_another_day()
    {
        var walk = Walk(Of(At(100)).Take("1A/1", At(10)).At(23).Take("1B/1", At(20)).At(1).Unload(At(2), on: Night(9)));
        Assert.Equal([First, First], walk.Moments.Select(m => m.Day));
        Assert.Equal(Second, walk.TakingOut?.Day);
    }

    [Fact]
    public void A_dawn_is_of_its_own_date() =>
        Assert.Equal(Second, Walk(Of(At(100)).LoadedOn(Second, 5).Take("1A/1", At(10)).At(5)).Moments.Single().Day);

    [Fact]
    public void A_roll_unloaded_two_nights_later_has_that_date() =>
        Assert.Equal(
            Third,
            Walk(Of(At(100)).Take("1A/1", At(10)).At(22).Unload(At(2), on: Third.ToDateTime(new TimeOnly(2, 0)))).TakingOut?.Day
        );

    [Fact]
    public void A_night_roll_is_in_no_camera_on_the_evening_that_it_was_shot()
    {
        var night = Of(At(100)).FromUnit(1).Head(At(4)).Take("1A/1", At(60)).At(23).Unload(At(2), on: Night(2));
        var day = Assert.Single(SmallProduction.Of(night).Stock().Days);
        Assert.Equal((First, At(38), At(0)), (day.On, day.ShortEndsMade, day.InCamera));
    }

    [Fact]
    public void A_day_that_is_written_has_the_last_word() =>
        AssertDays(
            [Second, Second, Third],
            Of(At(100)).RunOff(At(10)).At(9, day: 1).Take("1A/1", At(20)).Take("1B/1", At(30)).At(9, on: 1, day: 2)
        );

    [Fact]
    public void A_roll_loaded_the_evening_before_can_say_so()
    {
        var sheet = Of(At(100)).Head(At(4)).Take("1A/1", At(10)).At(9).Unload(At(2), on: Second.ToDateTime(new TimeOnly(12, 0)));
        var walk = Walk(
            new Sheet(
                sheet.Roll with
                {
                    Load = sheet.Roll.Load with { Day = Written(Second) },
                    Unload = sheet.Roll.Unload! with { Day = Written(Third) },
                }
            )
        );
        Assert.Equal([Second, Second, Third], walk.All.Select(m => m.Day));
    }

    [Fact]
    public void A_gap_is_of_the_day_of_the_entry_that_moved_past_it()
    {
        var strip = Of(At(100)).Head(At(4)).Take("1A/1", At(10)).Take("1B/1", At(30), from: At(20)).At(9, on: 1).Strip();
        var gap = strip.Segments.Single(s => s.Cause == WasteCause.Gap);
        Assert.Equal((new Shoot.Walks.Span(At(10), At(20)), Second), (gap.Span, gap.Custody.On));
    }

    [Fact]
    public void After_an_unreadable_entry_nobody_knows_where_the_film_is()
    {
        var roll = Of(At(100)).Head(At(4)).Take("1A/1", At(10)).Roll;
        var lost = RollStand.Loaded(roll.Load).AfterUnreadable(Speed.Normal);
        Assert.Null(lost.OnSheet);
        Assert.Equal(At(10), lost.After(roll.Log[0]).OnSheet);
    }

    [Fact]
    public void Days_of_a_roll_add_up_to_the_roll() => CsCheck.Check.Sample(AnyRoll.Sheet, sheet =>
        {
            var book = sheet.Book();
            var known = book.Walk.All.Select(m => m.Day).ToHashSet();
            Assert.All(book.Strip.Segments, s => Assert.Contains(s.Custody.On, known));
            Assert.Equal(
                book.Strip.Loaded,
                new Footage(book.Strip.Segments.GroupBy(s => s.Custody.On).Sum(day => day.Sum(s => s.Span.Length.Frames)))
            );
        });

    [Fact]
    public void Film_in_the_camera_in_the_evening_is_what_the_moments_left() => CsCheck.Check.Sample(AnyRoll.Sheet, sheet =>
        {
            var production = SmallProduction.Of(sheet.FromUnit(1));
            var book = BookKeeper.Keep(production).Rolls.Single();
            var twin = new NaiveTwin(book.Roll, book.Strip.Loaded.Frames);
            var (loaded, taken) = (book.Walk.Loading.Day, book.Walk.TakingOut?.Day);
            foreach (var day in production.Stock().Days)
            {
                var isIn = loaded <= day.On && (taken is null || taken > day.On);
                Assert.Equal(
                    isIn ? twin.Boxes.Count(b => b.Falls().Account == Account.ShortEnd || b.Day() > day.On) : 0,
                    day.InCamera.Frames
                );
            }
        });

    [Theory]
    [InlineData(10, 12)]
    [InlineData(22, 0)]
    [InlineData(30, 0)]
    public void What_an_18_ft_spring_still_drives_is_what_it_did_not_drive_since_4_ft(long to, long left)
    {
        // Common practice: a spring drives some 18 ft. The rest is subtraction.
        var end = Walk(Of(At(100)).Head(At(4)).Wind().Take("1A/1", At(to))).End;
        Assert.Equal(At(left), end.LeftOnSpring(At(18)));
    }

    [Fact]
    public void A_roll_is_in_a_body_until_it_is_threaded_into_another_or_unloaded()
    {
        var stays = Walk(Of(At(100)).Take("1A/1", At(10)).At(11).Reload(body: "B2", on: Night(3)).Unload(At(2), on: Night(9)))
            .Stays.ToList();
        Assert.Equal(["B1", "B2"], stays.Select(s => s.Body));
        Assert.Equal([new DateTime(2026, 10, 4, 9, 10, 0), Night(3)], stays.Select(s => s.From));
        Assert.Equal([new DateTime(2026, 10, 4, 11, 0, 0), Night(9)], stays.Select(s => s.To));
    }

    [Fact]
    public void What_is_written_down_late_does_not_end_a_stay_before_what_was_known()
    {
        // The note of nine was written after the take of two in the afternoon.
        var stays = Walk(Of(At(100)).Take("1A/1", At(10)).At(14).Remark("as of nine").At(9).Reload(body: "B2", on: Night(3)))
            .Stays.ToList();
        Assert.Equal(new DateTime(2026, 10, 4, 14, 0, 0), stays[0].To);
    }

    [Fact]
    public void A_roll_whose_sheet_names_no_body_was_in_none_that_is_known()
    {
        var sheet = Of(At(100)).Take("1A/1", At(10));
        Assert.Empty(Walk(new Sheet(sheet.Roll with { Body = null })).Stays);
        var into = new Sheet(sheet.Roll with { Body = null }).Reload(body: "B2", on: Night(3));
        Assert.Equal(["B2"], Walk(into).Stays.Select(s => s.Body));
    }

    static RollWalk Walk(Sheet sheet) => RollWalk.Of(sheet.Roll);

    static DateTime Night(int hour) => Second.ToDateTime(new TimeOnly(hour, 0));

    static void AssertDays(DateOnly[] days, Sheet sheet) => Assert.Equal(days, Walk(sheet).Moments.Select(m => m.Day));
}
