using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

/// <summary>Days, times of day, and how long something takes.</summary>
static class TimeForms
{
    const string DayPattern = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    const string ClockPattern = "[0-9]{1,2}:[0-9]{2}";

    public static readonly Form<DateOnly> Date = new(
        SheetChecks.BadDate,
        Sentence.Of("sheet/bad-date.value.date"),
        Sentence.Of("sheet/bad-date.help.date"),
        FormJson.Text($"^{DayPattern}$"),
        ADate
    )
    {
        Rewrites = (text, _) => Rewritten.Date(text),
    };

    public static readonly Form<DateOnly> Expiry = new(
        SheetChecks.BadDate,
        Sentence.Of("sheet/bad-date.value.expiry"),
        Sentence.Of("sheet/bad-date.help.expiry"),
        FormJson.Text($"^[0-9]{{4}}-[0-9]{{2}}(-[0-9]{{2}})?$"),
        AnExpiry
    )
    {
        Rewrites = (text, _) => Rewritten.Date(text),
    };

    public static readonly Form<DateTime> DateAndTime = new(
        SheetChecks.BadDate,
        Sentence.Of("sheet/bad-date.value.date-and-time"),
        Sentence.Of("sheet/bad-date.help.date-and-time"),
        FormJson.Text($"^{DayPattern}[ T]{ClockPattern}(:[0-9]{{2}})?$"),
        ADateAndTime
    )
    {
        Rewrites = (text, _) => Rewritten.DateAndTime(text),
    };

    public static readonly Form<StockTime> DayOrMoment = new(
        SheetChecks.BadDate,
        Sentence.Of("sheet/bad-date.value.day-or-moment"),
        Sentence.Of("sheet/bad-date.help.day-or-moment"),
        FormJson.Text($"^{DayPattern}([ T]{ClockPattern}(:[0-9]{{2}})?)?$"),
        ADayOrMoment
    )
    {
        Rewrites = (text, _) => Rewritten.DateAndTime(text).Concat(Rewritten.Date(text)),
    };

    public static readonly Form<TimeOnly> Clock = new(
        SheetChecks.BadTime,
        Sentence.Of("sheet/bad-time.value.clock"),
        Sentence.Of("sheet/bad-time.help.clock"),
        FormJson.Text($"^{ClockPattern}$"),
        AClock
    )
    {
        Rewrites = (text, _) => Rewritten.Clock(text),
    };

    public static readonly Form<Ratio> Duration = new(
        SheetChecks.BadDuration,
        Sentence.Of("sheet/bad-duration.value.duration"),
        Sentence.Of("sheet/bad-duration.help.duration"),
        FormJson.Number("^[0-9]+([.][0-9]+)?$|^ *[0-9]+([.][0-9]+)?(/[0-9]*[1-9][0-9]*)? *(s|min|h) *$") with
        {
            Least = 0,
        },
        ADuration
    )
    {
        Rewrites = (text, _) => Rewritten.Duration(text),
    };

    public static readonly Form<ExposureTime> Exposure = new(
        SheetChecks.BadDuration,
        Sentence.Of("sheet/bad-duration.value.exposure"),
        Sentence.Of("sheet/bad-duration.help.exposure"),
        FormJson.Number("^ *[0-9]+([.][0-9]+)?(/[0-9]*[1-9][0-9]*([.][0-9]+)?)? *s? *$") with
        {
            Least = 0,
            LeastItself = false,
        },
        AnExposure
    )
    {
        Rewrites = (text, _) => Rewritten.Duration(text),
    };

    static bool AnExposure(string text, ReadingContext context, out ExposureTime value)
    {
        var read = Measure.Seconds(text.TrimEnd().EndsWith('s') ? text : text + "s").TryGet(out var seconds) && seconds.Sign > 0;
        value = read ? new ExposureTime(seconds) : default;
        return read;
    }

    static bool ADate(string text, ReadingContext context, out DateOnly value) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out value);

    static bool AnExpiry(string text, ReadingContext context, out DateOnly value)
    {
        if (ADate(text, context, out value))
        {
            return true;
        }

        var read = DateOnly.TryParseExact(text, "yyyy-MM", CultureInfo.InvariantCulture, DateTimeStyles.None, out var first);
        value = read ? new DateOnly(first.Year, first.Month, DateTime.DaysInMonth(first.Year, first.Month)) : default;
        return read;
    }

    static bool ADateAndTime(string text, ReadingContext context, out DateTime value)
    {
        string[] forms = ["yyyy-MM-dd HH:mm", "yyyy-MM-dd H:mm", "yyyy-MM-ddTHH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-ddTHH:mm:ss"];
        return DateTime.TryParseExact(text, forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out value);
    }

    static bool ADayOrMoment(string text, ReadingContext context, out StockTime value)
    {
        if (ADate(text, context, out var day))
        {
            value = new StockTime(day, null);
            return true;
        }

        var read = ADateAndTime(text, context, out var moment);
        value = new StockTime(DateOnly.FromDateTime(moment), TimeOnly.FromDateTime(moment));
        return read;
    }

    static bool AClock(string text, ReadingContext context, out TimeOnly value) =>
        TimeOnly.TryParseExact(text, "H:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out value);

    static bool ADuration(string text, ReadingContext context, out Ratio value) =>
        NumberForms.TryDecimal(text, out value) || Measure.Seconds(text).TryGet(out value);
}
