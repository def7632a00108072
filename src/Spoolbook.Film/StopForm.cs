using System.Globalization;
using System.Text.RegularExpressions;

namespace Spoolbook.Film;

/// <summary>The ways to write a stop.</summary>
static partial class StopForm
{
    const double Widest = 0.5;
    const double Narrowest = 256;

    public static Parsed<Stop, StopFault> Read(string text)
    {
        var written = text.Trim();
        return written switch
        {
            "" => Failed(StopFault.Empty, text),
            _ when written.StartsWith('-') => Failed(StopFault.NotAboveZero, text),
            _ when written.Contains(',', StringComparison.Ordinal) => Failed(StopFault.DecimalComma, text),
            _ when Form().Match(written) is { Success: true } match => Read(match, text),
            _ => Failed(StopFault.NotAStop, text),
        };
    }

    public static string Write(Stop stop, StopStep step)
    {
        var steps = step switch
        {
            StopStep.Half => 2,
            StopStep.Tenth => 10,
            _ => 3,
        };
        var count = (int)Math.Round(stop.Av * steps, MidpointRounding.AwayFromZero);
        var whole = (int)Math.Floor((double)count / steps);
        return Prefix(stop.Mark) + Write(whole, count - (whole * steps), step);
    }

    public static string WriteExact(Stop stop)
    {
        foreach (var (step, steps) in ((StopStep, int)[])[(StopStep.Third, 3), (StopStep.Half, 2), (StopStep.Tenth, 10)])
        {
            var count = stop.Av * steps;
            if (Math.Abs(count - Math.Round(count)) < StopSeries.Hair)
            {
                return Write(stop, step);
            }
        }

        return Prefix(stop.Mark) + StopSeries.Number(stop.Number);
    }

    static string Write(int whole, int over, StopStep step) =>
        (over, step) switch
        {
            (0, _) => StopSeries.Text(whole),
            (_, StopStep.Half) => $"{StopSeries.Text(whole)}/{StopSeries.Text(whole + 1)}",
            (_, StopStep.Third) => string.Create(CultureInfo.InvariantCulture, $"{StopSeries.Text(whole)} {over}/3"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{StopSeries.Text(whole)}+0.{over}"),
        };

    static string Prefix(StopMark mark) =>
        mark switch
        {
            StopMark.F => "f/",
            StopMark.T => "T",
            _ => "",
        };

    static Parsed<Stop, StopFault> Read(Match match, string text)
    {
        var mark = match.Groups["mark"].Value switch
        {
            "" => StopMark.None,
            "T" or "t" => StopMark.T,
            _ => StopMark.F,
        };
        var number = Value(match.Groups["number"]);
        if (number is < Widest or > Narrowest)
        {
            return Failed(number == 0 ? StopFault.NotAboveZero : StopFault.BeyondAnyLens, text);
        }

        var stop = Stop.OfNumber(number, mark);
        return match.Groups["other"].Success ? Split(stop, Value(match.Groups["other"]), text)
            : match.Groups["part"].Success ? WithPart(stop, match, text)
            : stop;
    }

    static Parsed<Stop, StopFault> Split(Stop wider, double number, string text)
    {
        if (number == 0)
        {
            return Failed(StopFault.NotNeighbours, text);
        }

        var apart = Stop.OfNumber(number).Av - wider.Av;
        return apart is <= 0 or > 1 + StopSeries.Hair ? Failed(StopFault.NotNeighbours, text) : wider.OpenedBy(-apart / 2);
    }

    static Parsed<Stop, StopFault> WithPart(Stop stop, Match match, string text)
    {
        var over = match.Groups["over"].Success ? Value(match.Groups["over"]) : 1;
        var part = over == 0 ? 1 : Value(match.Groups["part"]) / over;
        return part is <= 0 or >= 1 ? Failed(StopFault.NotAPart, text) : stop.OpenedBy(-part);
    }

    static double Value(Group group) => double.Parse(group.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    static Parsed<Stop, StopFault> Failed(StopFault fault, string text) => new(fault, text);

    // "5.6+1/3", "5.6 1/3" and "5.6+0.3"; a slash straight after the number is a split. No lens has nine digits.
    [GeneratedRegex(
        @"^((?<mark>[fF])/?|(?<mark>[tT]))?\s*(?<number>[0-9]{1,9}(\.[0-9]{1,9})?)(\s*/\s*(?<other>[0-9]{1,9}(\.[0-9]{1,9})?)(\s+split)?"
            + @"|(\s*\+\s*|\s+)((?<part>[0-9]{1,9})/(?<over>[0-9]{1,9})|(?<part>0\.[0-9]{1,9})))?$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Form();
}
