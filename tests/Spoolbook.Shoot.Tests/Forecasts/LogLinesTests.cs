using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;

namespace Spoolbook.Shoot.Tests.Forecasts;

public class LogLinesTests
{
    [Fact]
    public void A_roll_to_come_has_as_many_lines_a_foot_as_those_before_it()
    {
        // Five takes on 50 ft; a winding has no line, a remark has one.
        var sheet = Enumerable
            .Range(1, 5)
            .Aggregate(Sheet.Of(Sheet.At(100)), (s, n) => s.Wind().Take($"1A/{n}", Sheet.At(10 * n)))
            .Remark("Rain");
        var book = BookKeeper.Keep(SmallProduction.Of(sheet.Unload(left: Remainder.Kept)));

        Assert.Equal(12, LogLines.Expected(book, Sheet.At(100)));
        Assert.Equal(3, LogLines.Expected(book, Sheet.At(20)));
    }

    [Fact]
    public void Before_anything_is_shot_the_screen_times_of_the_list_count()
    {
        // 20 s on the screen at 24 are 12 ft, 10 s are 6 ft: 9 ft a line.
        var shots = new[] { 20, 10 }.Select(
            (seconds, i) => new PlannedShot(default, Sheet.Written($"{i}"), null, null, Sheet.Written(new Ratio(seconds, 1)), null)
        );
        var book = BookKeeper.Keep(SmallProduction.Of() with { Shots = [.. shots] });

        Assert.Equal(12, LogLines.Expected(book, Sheet.At(100)));
    }

    [Fact]
    public void With_neither_rolls_nor_a_list_no_number_of_lines_is_expected() =>
        Assert.Null(LogLines.Expected(BookKeeper.Keep(SmallProduction.Of()), Sheet.At(100)));
}
