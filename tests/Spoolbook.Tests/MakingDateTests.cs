namespace Spoolbook.Tests;

/// <summary>The date that SOURCE_DATE_EPOCH gives, or a word about it.</summary>
public sealed class MakingDateTests
{
    static readonly DateTimeOffset _now = new(2026, 10, 5, 17, 30, 0, TimeSpan.FromHours(2));

    [Theory]
    [InlineData("yesterday")]
    [InlineData("-1")]
    [InlineData("1.5")]
    [InlineData(" 1790000000")]
    [InlineData("2026-10-05")]
    [InlineData("253402300799")]
    [InlineData("253402300800")]
    [InlineData("1790000000000")]
    [InlineData("99999999999999999999")]
    public void What_is_no_date_is_refused_with_what_to_write(string epoch)
    {
        var refused = MakingDate.Of(epoch, _now).Refused;

        Assert.StartsWith($"SOURCE_DATE_EPOCH is '{epoch}', which is no date. Write whole seconds", refused, StringComparison.Ordinal);
    }

    [Fact]
    public void No_command_runs_under_a_date_that_is_none()
    {
        using var output = new StringWriter();
        using var error = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(output, error, Repository.Root, Workbench.Made, Colour: false, Width: 100)
        {
            Refused = "SOURCE_DATE_EPOCH is 'x\u001b[2J'.",
        };

        Assert.Equal(2, SpoolbookApp.Run(["check", Repository.Sample], around));
        Assert.Equal(("", "spoolbook: SOURCE_DATE_EPOCH is 'x\\u001B[2J'.\n"), (output.ToString(), error.ToString()));
    }

    [Theory]
    [InlineData("0", "1970-01-01")]
    [InlineData("1790000000", "2026-09-21")]
    [InlineData("", "2026-10-05")]
    [InlineData(null, "2026-10-05")]
    public void A_date_is_taken_and_today_where_there_is_none(string? epoch, string date)
    {
        var made = MakingDate.Of(epoch, _now);

        Assert.Null(made.Refused);
        Assert.Equal(date, made.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
    }
}
