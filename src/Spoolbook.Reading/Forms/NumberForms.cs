using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

/// <summary>Plain numbers, parts of a whole, and money.</summary>
static class NumberForms
{
    const int MostWhole = 999_999;
    const int MostMireds = 500;
    const int MostCounted = 99_999_999;
    const string FromOnePattern = "^0*[1-9][0-9]{0,5}$";
    const string FromZeroPattern = "^0*[0-9]{1,6}$";
    const string DecimalPattern = "^[0-9]+([.][0-9]+)?$";

    // More digits than any count of film or money needs, and few enough that no sum overflows.
    const int MostDigits = 12;

    public static readonly Form<int> FromOne = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.from-one"),
        Sentence.Of("sheet/bad-number.help.from-one"),
        FormJson.Whole(1, MostWhole, FromOnePattern),
        (string t, ReadingContext c, out int v) => Whole(t, 1, out v)
    );

    public static readonly Form<int> FromZero = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.from-zero"),
        Sentence.Of("sheet/bad-number.help.from-zero"),
        FormJson.Whole(0, MostWhole, FromZeroPattern),
        (string t, ReadingContext c, out int v) => Whole(t, 0, out v)
    );

    public static readonly Form<int> Mireds = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.mireds"),
        Sentence.Of("sheet/bad-number.help.mireds"),
        FormJson.Whole(-MostMireds, MostMireds, "^-?0*[0-9]{1,3}$"),
        AShift
    );

    public static readonly Form<long> Counter = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.counter"),
        Sentence.Of("sheet/bad-number.help.counter"),
        FormJson.Whole(0, MostCounted, "^0*[0-9]{1,8}$"),
        ACounter
    );

    public static readonly Form<Ratio> AboveZero = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.above-zero"),
        Sentence.Of("sheet/bad-number.help.above-zero"),
        FormJson.Number(DecimalPattern) with
        {
            Least = 0,
            LeastItself = false,
        },
        AnAmount
    );

    public static readonly Form<Ratio> Millimetres = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.millimetres"),
        Sentence.Of("sheet/bad-number.help.millimetres"),
        FormJson.Number("^[0-9]+([.][0-9]+)?( *mm)?$") with
        {
            Least = 0,
            LeastItself = false,
        },
        InMillimetres
    );

    public static readonly Form<decimal> Money = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.money"),
        Sentence.Of("sheet/bad-number.help.money"),
        FormJson.Number(DecimalPattern) with
        {
            Least = 0,
        },
        AmountOfMoney
    );

    static readonly FormJson _partJson = FormJson.Number(
        "^ *[0-9]+([.][0-9]+)? *%? *$|^ *[0-9]+([.][0-9]+)?/[0-9]*[1-9][0-9]*([.][0-9]+)? *%? *$"
    ) with
    {
        Least = 0,
        Most = 1,
    };

    public static readonly Form<Ratio> Part = new(
        SheetChecks.BadFraction,
        Sentence.Of("sheet/bad-fraction.value.part"),
        Sentence.Of("sheet/bad-fraction.help.part"),
        _partJson,
        APart
    )
    {
        Objection = (text, _) => Measure.Part(text).Slip,
    };

    public static readonly Form<decimal> Tax = new(
        SheetChecks.BadFraction,
        Sentence.Of("sheet/bad-fraction.value.tax"),
        Sentence.Of("sheet/bad-fraction.help.tax"),
        _partJson,
        ATax
    );

    /// <summary>An amount of money, or a percentage of another price.</summary>
    public static readonly Form<PushRate> PushRate = new(
        SheetChecks.BadNumber,
        Sentence.Of("sheet/bad-number.value.push-rate"),
        Sentence.Of("sheet/bad-number.help.push-rate"),
        FormJson.Number("^[0-9]+([.][0-9]+)?( *%)?$") with
        {
            Least = 0,
        },
        APushRate
    );

    public static readonly Form<int> SingleFrames = new(
        SheetChecks.BadChoice,
        Sentence.Of("sheet/bad-choice.value.single-frames"),
        Sentence.Of("sheet/bad-choice.help.single-frames"),
        FormJson.Whole(1, MostWhole, "^(ones|twos|threes|0*[1-9][0-9]{0,5})$"),
        OnesTwosThrees
    );

    /// <summary>Digits with at most one point among them, as an exact fraction.</summary>
    public static bool TryDecimal(string text, out Ratio value)
    {
        value = Ratio.Zero;
        var digits = text.Count(char.IsAsciiDigit);
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var wellFormed =
            digits == text.Length - (point < 0 ? 0 : 1) && digits is > 0 and <= MostDigits && point != 0 && point != text.Length - 1;
        if (wellFormed)
        {
            value = Ratio.FromDecimal(decimal.Parse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));
        }

        return wellFormed;
    }

    static bool Whole(string text, int least, out int value) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value >= least && value <= MostWhole;

    static bool AShift(string text, ReadingContext context, out int value) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value)
        && Math.Abs(value) <= MostMireds
        && !text.StartsWith('+');

    static bool ACounter(string text, ReadingContext context, out long value) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value <= MostCounted;

    static bool AnAmount(string text, ReadingContext context, out Ratio value) => TryDecimal(text, out value) && value.Sign > 0;

    static bool InMillimetres(string text, ReadingContext context, out Ratio value) =>
        AnAmount(text.EndsWith("mm", StringComparison.Ordinal) ? text[..^2].TrimEnd(' ') : text, context, out value);

    static bool AmountOfMoney(string text, ReadingContext context, out decimal value)
    {
        value = 0;
        return TryDecimal(text, out _) && decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
    }

    static bool APushRate(string text, ReadingContext context, out PushRate value)
    {
        var isPart = text.EndsWith('%');
        var read = AmountOfMoney(isPart ? text[..^1].TrimEnd(' ') : text, context, out var number);
        value = isPart ? new PushRate(null, number / 100) : new PushRate(number, null);
        return read;
    }

    static bool APart(string text, ReadingContext context, out Ratio value) => Measure.Part(text).TryGet(out value);

    // A tax rate has a few decimals at most, and a fraction with many digits would not fit a decimal.
    static bool ATax(string text, ReadingContext context, out decimal value)
    {
        var read = Measure.Part(text).TryGet(out var part) && part.Denominator <= 1_000_000;
        value = read ? (decimal)part.Numerator / (decimal)part.Denominator : 0;
        return read;
    }

    static bool OnesTwosThrees(string text, ReadingContext context, out int value)
    {
        value = text switch
        {
            "ones" => 1,
            "twos" => 2,
            "threes" => 3,
            _ => 0,
        };
        return value > 0 || Whole(text, 1, out value);
    }
}
