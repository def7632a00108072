using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Wording;

/// <summary>
/// Writes values for one production: in its units, its language, its currency. Everything that a paper prints passes
/// through here, and nothing here calculates.
/// </summary>
public sealed class PaperFormat(Production production, Translations words)
{
    /// <summary>For a value that is none, or was not written.</summary>
    public const string Dash = "–";

    readonly string[] _months = words["months-short"].Split(' ');
    readonly string[] _weekdays = words["days-short"].Split(' ');

    /// <summary>The words.</summary>
    public Translations Words => words;

    /// <summary>What findings say, in the papers' language; in English where findings have none of it.</summary>
    public SentenceTexts Sentences { get; } = SentenceTexts.For(production.Language);

    /// <summary>A position or length: <c>31+12</c>, or metres with two decimals.</summary>
    public string Length(Footage length) =>
        InMetres ? Decimal(length.Metres(production.Gauge).ToText(2)) : length.FeetAndFrames(production.Gauge);

    /// <summary>The length between two positions; in metres, of the positions as they are printed beside it.</summary>
    public string LengthOf(Footage from, Footage to) => InMetres ? Metres(Centimetres(to) - Centimetres(from)) : Length(to - from);

    /// <summary>A length with its unit, for running text: <c>31+12 ft</c>, <c>9.54 m</c>.</summary>
    public string LengthWithUnit(Footage length) => Length(length) + (InMetres ? " m" : " ft");

    /// <summary>Whether lengths are in metres.</summary>
    public bool InMetres => production.Units == LengthUnit.Metres;

    /// <summary>Centimetres of an account, in metres: <c>9.54</c>.</summary>
    public string Metres(long centimetres) => Decimal(new Ratio(centimetres, 100).ToText(2));

    /// <summary>The same, or a dash for none.</summary>
    public string MetresOrDash(long centimetres) => centimetres == 0 ? Dash : Metres(centimetres);

    /// <summary>A length of an account; in metres, as its account prints it.</summary>
    public string Account(Footage length, long centimetres) => InMetres ? Metres(centimetres) : Length(length);

    /// <summary>A length of an account with its unit; in metres, as its account prints it.</summary>
    public string AccountWithUnit(Footage length, long centimetres) => Account(length, centimetres) + (InMetres ? " m" : " ft");

    /// <summary>The length of a unit: <c>100 ft</c>, <c>30.48 m</c>.</summary>
    public string UnitLength(Footage length) =>
        InMetres ? Trim(length.Metres(production.Gauge).ToText(2)) + " m"
        : length.Feet(production.Gauge).IsWhole ? LengthRoundedUp(length)
        : LengthWithUnit(length);

    /// <summary>A length, or a dash for none.</summary>
    public string LengthOrDash(Footage length) => length == Footage.Zero ? Dash : Length(length);

    /// <summary>A length rounded up to whole feet or metres, where nobody knows it to the frame: <c>432 ft</c>.</summary>
    public string LengthRoundedUp(Footage length) => WholeUnits((new Ratio(length.Frames, 1) / FramesPerUnit).Ceiling());

    /// <summary>A length rounded down to whole feet or metres, as <see cref="LengthRoundedUp"/>.</summary>
    public string LengthRoundedDown(Footage length) => WholeUnits((new Ratio(length.Frames, 1) / FramesPerUnit).Floor());

    /// <summary>How often film was X-rayed, as on its can; empty for never.</summary>
    public string XRayed(int passes) => passes > 0 ? words.Fill("label-x-rayed", ("n", Number(passes))) : "";

    /// <summary>The unit of lengths: <c>ft+fr</c> or <c>m</c>.</summary>
    public string LengthUnitName => words[InMetres ? "unit-metres" : "unit-feet"];

    /// <summary>The frames in one unit of a ruler: a foot or a metre.</summary>
    public double RulerUnit => FramesPerUnit.ToDouble();

    /// <summary>The unit of a ruler, short.</summary>
    public string RulerUnitName => " " + words[InMetres ? "picture-ruler-metres" : "picture-ruler-feet"];

    /// <summary>A date: <c>Sun 4 Oct 2026</c>.</summary>
    public string Date(DateOnly date) =>
        words.Fill(
            "date-form",
            ("weekday", _weekdays[((int)date.DayOfWeek + 6) % 7]),
            ("day", Number(date.Day)),
            ("month", _months[date.Month - 1]),
            ("year", Number(date.Year))
        );

    /// <summary>A date, or nothing: room to write it in by hand.</summary>
    public string DateOrBlank(Located<DateOnly>? date) => date is { } written ? Date(written.Value) : "";

    /// <summary>A date without its weekday and year, for an axis: <c>4 Oct</c>.</summary>
    public string DateShort(DateOnly date) => words.Fill("date-short-form", ("day", Number(date.Day)), ("month", _months[date.Month - 1]));

    /// <summary>A date and the time of day.</summary>
    public string DateAndTime(DateTime moment) => Date(DateOnly.FromDateTime(moment)) + ", " + Time(TimeOnly.FromDateTime(moment));

    /// <summary>A time of day: <c>09:10</c>.</summary>
    public static string Time(TimeOnly time) => time.ToString("HH':'mm", CultureInfo.InvariantCulture);

    /// <summary>Seconds with one decimal, as for a take: <c>12.4</c>.</summary>
    public string Seconds(Ratio seconds) => Decimal(seconds.ToText(1));

    /// <summary>A computed figure that one decimal would spoil: up to five of them, <c>4.16667</c>, <c>0.0999</c>.</summary>
    public string Precisely(Ratio figure) => Trim(figure.ToText(5));

    /// <summary>Gigabytes with one decimal.</summary>
    public string Gigabytes(Ratio gigabytes) => Decimal(gigabytes.ToText(1)) + "\u00A0GB";

    /// <summary>Megabytes with one decimal.</summary>
    public string Megabytes(Ratio megabytes) => Decimal(megabytes.ToText(1)) + "\u00A0MB";

    /// <summary>Minutes and seconds, as for a roll: <c>2:47</c>.</summary>
    public static string Clock(Ratio seconds)
    {
        var whole = seconds.Round();
        return string.Create(CultureInfo.InvariantCulture, $"{whole / 60}:{(int)(whole % 60):00}");
    }

    /// <summary>Stops with their sign and as few decimals as needed: <c>+1</c>, <c>−0.5</c>, <c>0</c>.</summary>
    public string Stops(double stops)
    {
        var rounded = Math.Round(stops, 2, MidpointRounding.AwayFromZero);
        var text = Decimal(Math.Abs(rounded).ToString("0.##", CultureInfo.InvariantCulture));
        return rounded > 0 ? "+" + text
            : rounded < 0 ? "−" + text
            : text;
    }

    /// <summary>
    /// What the film gets, in stops to the nearest third or half, between the two the half, as a shutter a quarter closed counts
    /// (common practice): <c>+1</c>, <c>−1 2/3</c>, <c>0</c>.
    /// </summary>
    public static string StopsGained(double stops)
    {
        const double asNear = 0.005;
        var twice = Math.Round(Math.Abs(stops) * 2);
        var thirds = (long)Math.Round(Math.Abs(stops) * 3, MidpointRounding.AwayFromZero);
        var isHalf = twice % 2 == 1 && Math.Abs(Math.Abs(stops) - (twice / 2)) <= Math.Abs(Math.Abs(stops) - (thirds / 3.0)) + asNear;
        var (whole, part) = isHalf ? ((long)twice / 2, "1/2") : (thirds / 3, thirds % 3 == 0 ? "" : Number(thirds % 3) + "/3");
        var text = whole == 0 && part.Length > 0 ? part : (Number(whole) + " " + part).TrimEnd();
        return text == "0" ? text
            : stops > 0 ? "+" + text
            : "−" + text;
    }

    /// <summary>A whole number.</summary>
    public static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A count of things: <c>1 can</c>, <c>6 cans</c>.</summary>
    public string Count(long number, string thing) => words.Fill(thing + (number == 1 ? "-one" : "-many"), ("n", Number(number)));

    /// <summary>A ratio as <c>4.2 : 1</c>, or a dash where it has no divisor.</summary>
    public string ToOne(Ratio? ratio) => ratio is { } known ? Decimal(known.ToText(1)) + " : 1" : Dash;

    /// <summary>A part of a whole in per cent, without decimals.</summary>
    public string Percent(Ratio part) => Decimal((part * 100).ToText(0)) + "\u00A0%";

    /// <summary>A chance in per cent; near zero only as close as anybody can know.</summary>
    public string Chance(Ratio chance) => chance * 100 < Ratio.One ? words["forecast-under-one"] : Percent(chance);

    /// <summary>An amount with the currency; the word for open where it is unknown.</summary>
    public string Money(decimal? amount) =>
        amount is { } known
            ? Decimal(known.ToString("0.00", CultureInfo.InvariantCulture)) + " " + production.Rates?.Currency.Value
            : words["open"];

    /// <summary>A number with its thousands apart: <c>4,000</c>.</summary>
    public string Thousands(long number) =>
        number.ToString("N0", CultureInfo.InvariantCulture).Replace(",", words["thousands"], StringComparison.Ordinal);

    /// <summary>The value of a thing: an amount with the currency, where rates name one.</summary>
    public string Worth(decimal amount) => Amount(amount) + (production.Rates is { } rates ? " " + rates.Currency.Value : "");

    /// <summary>An amount of money without the currency, with the decimals written but at least two.</summary>
    public string Amount(decimal amount) => Decimal(amount.ToString("0.00##", CultureInfo.InvariantCulture));

    /// <summary>A measured figure with one decimal.</summary>
    public string Decimals(double figure) => Decimal(figure.ToString("0.0", CultureInfo.InvariantCulture));

    /// <summary>A round number on an axis: <c>500</c>, <c>−20</c>, <c>2.5</c>.</summary>
    public string Plain(double number)
    {
        var rounded = Math.Round(number, 6);
        return (rounded < 0 ? "−" : "") + Decimal(Math.Abs(rounded).ToString("0.######", CultureInfo.InvariantCulture));
    }

    /// <summary>A quantity: a whole number, or one or two decimals.</summary>
    public string Quantity(Ratio quantity) => Trim(quantity.ToText(2));

    /// <summary>A quantity with at most so many decimals.</summary>
    public string Quantity(Ratio quantity, int places) => Trim(quantity.ToText(places));

    /// <summary>A yes or no, or a dash where it was not written.</summary>
    public string YesNo(bool? value) => value is { } known ? words[known ? "yes" : "no"] : words["not-stated"];

    /// <summary>A written value, with the language's decimal sign, or a dash.</summary>
    public string AsWritten(object? written) => Decimal(OrDash(written));

    /// <summary>A written value, or a dash.</summary>
    public static string OrDash(object? written) => written?.ToString() is { Length: > 0 } text ? text : Dash;

    /// <summary>A person by name, or a dash.</summary>
    public string Person(string? id) => id is null ? Dash : production.NameOf(id);

    /// <summary>Director and cinematographer, as far as they are written.</summary>
    public ImmutableArray<string> Credits =>
        [
            .. from credit in new[]
            {
                (Role: "director", Who: production.Director),
                (Role: "cinematographer", Who: production.Cinematographer),
            }
            where credit.Who is not null
            select words.Fill(credit.Role, ("name", Person(credit.Who.Value))),
        ];

    /// <summary>Focus as on the lens's scale: <c>6 ft</c>, <c>1.8 m</c>, <c>∞</c>. One read from a sheet is as written.</summary>
    public string Focus(Distance? distance) =>
        distance is not { } known ? Dash
        : known.IsInfinity ? "∞"
        : known.Written is { } written ? Decimal(written)
        : InMetres ? Trim((known.Millimetres / 1000).ToText(2)) + " m"
        : Trim((known.Millimetres / Film.Length.MillimetresPerFoot).ToText(1)) + " ft";

    /// <summary>
    /// The letters of a mark: G, H, NG, T. To a lab a circle means "print this one": a letter has one where only takes
    /// with that mark are to be scanned.
    /// </summary>
    public string Mark(Mark mark) => IsPicked(mark) ? Circled(words["mark-" + Key(mark)]) : words["mark-" + Key(mark)];

    /// <summary>What of a roll the lab is to scan, in a sentence: all of it, or the takes with a circle.</summary>
    public string ToScan =>
        production.Lab?.Deliver?.Takes?.Value switch
        {
            DeliveredTakes.Good => words.Fill("scan-picked", ("marks", Mark(Shoot.Records.Mark.Good))),
            DeliveredTakes.GoodAndHold => words.Fill(
                "scan-picked",
                ("marks", words.Fill("mark-or-mark", ("first", Mark(Shoot.Records.Mark.Good)), ("second", Mark(Shoot.Records.Mark.Hold))))
            ),
            _ => words["scan-whole"],
        };

    /// <summary>Whether only takes with some marks are to be scanned, and this is one of those marks.</summary>
    internal bool IsPicked(Mark mark) =>
        production.Lab?.Deliver?.Takes?.Value switch
        {
            DeliveredTakes.Good => mark == Shoot.Records.Mark.Good,
            DeliveredTakes.GoodAndHold => mark is Shoot.Records.Mark.Good or Shoot.Records.Mark.Hold,
            _ => false,
        };

    // The capital letters in circles follow one another in Unicode; a mark of two letters is a word, and has brackets.
    static string Circled(string mark) => mark is [>= 'A' and <= 'Z'] ? ((char)('\u24B6' + mark[0] - 'A')).ToString() : "(" + mark + ")";

    /// <summary>
    /// A process as a lab writes it, <c>ECN-2</c>; one that the words do not know, as written; none, that it is not stated.
    /// </summary>
    public string Process(string? process) =>
        process is null ? words["not-stated"]
        : Keyed(process) is var key && words.Has("process-name-" + key) ? words["process-name-" + key]
        : IsCode(process) ? process.ToUpperInvariant()
        : process;

    // Letters and a number: a lab writes E-6, however it was typed.
    static bool IsCode(string process) =>
        process.TakeWhile(char.IsAsciiLetter).Count() is > 0 and <= 4 and var letters
        && process[letters..].TrimStart('-') is { Length: > 0 and <= 3 } number
        && number.All(char.IsAsciiDigit);

    /// <summary>The same where there is little room: <c>B&amp;W REVERSAL</c>.</summary>
    public string ShortProcess(string? process) =>
        process is not null && Keyed(process) is var key && words.Has("process-short-" + key)
            ? words["process-short-" + key]
            : Process(process);

    /// <summary>Why film is waste, in a word or two.</summary>
    public string Cause(WasteCause cause) => words["waste-" + cause.ToString().ToLowerInvariant()];

    /// <summary>The same in a letter or two, for a picture without room for the word.</summary>
    public string CauseLetter(WasteCause cause) => words["waste-letter-" + cause.ToString().ToLowerInvariant()];

    /// <summary>The light of a loading.</summary>
    public string Light(LoadingLight? light) => light is { } known ? words["light-" + known.ToString().ToLowerInvariant()] : Dash;

    /// <summary>A colour balance.</summary>
    public string Balance(ColourBalance balance) => words["balance-" + balance.ToString().ToLowerInvariant()];

    long Centimetres(Footage length) => (long)(length.Metres(production.Gauge) * 100).Round();

    Ratio FramesPerUnit => InMetres ? production.Gauge.FramesPerMetre : production.Gauge.FramesPerFoot;

    string WholeUnits(System.Numerics.BigInteger units) => Number((long)units) + (InMetres ? " m" : " ft");

    static string Keyed(string process) => process.ToLowerInvariant().Replace(' ', '-');

    static string Key(Mark mark) => mark == Shoot.Records.Mark.NoGood ? "ng" : mark.ToString().ToLowerInvariant();

    string Trim(string text) => Decimal(text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text);

    string Decimal(string text) => text.Replace(".", words["decimal"], StringComparison.Ordinal);
}
