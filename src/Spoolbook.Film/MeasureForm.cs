using System.Text.RegularExpressions;

namespace Spoolbook.Film;

/// <summary>A number with a unit.</summary>
/// <param name="kind">What is measured.</param>
/// <param name="units">What one of each unit is worth; includes the empty unit where a bare number is allowed.</param>
/// <param name="most">The largest value allowed; null for no limit.</param>
/// <param name="aboveZero">Whether zero is a mistake.</param>
sealed partial class MeasureForm(MeasureKind kind, Dictionary<string, Ratio> units, Ratio? most = null, bool aboveZero = false)
{
    const int LongestNumber = 15;

    public Parsed<Ratio, MeasureFault> Read(string text)
    {
        var written = text.Trim();
        var match = Form().Match(written);
        if (FaultOf(written, match) is { } fault)
        {
            return Failed(fault, text);
        }

        var over = match.Groups["over"];
        var number = DecimalText.Read(match.Groups["number"].Value) / (over.Success ? DecimalText.Read(over.Value) : 1);
        var value = number * units[match.Groups["unit"].Value];
        return value > most ? Failed(MeasureFault.TooMuch, text)
            : aboveZero && value.Sign == 0 ? Failed(MeasureFault.NotAboveZero, text)
            : value;
    }

    MeasureFault? FaultOf(string written, Match match) =>
        written switch
        {
            "" => MeasureFault.Empty,
            _ when written.StartsWith('-') => MeasureFault.Negative,
            _ when written.Contains(',', StringComparison.Ordinal) => MeasureFault.DecimalComma,
            _ when !match.Success => MeasureFault.NotANumber,
            _ when match.Groups["number"].Length > LongestNumber || match.Groups["over"].Length > LongestNumber => MeasureFault.TooMuch,
            _ when match.Groups["over"] is { Success: true } over && DecimalText.Read(over.Value).Sign == 0 => MeasureFault.OverZero,
            _ when units.ContainsKey(match.Groups["unit"].Value) => null,
            _ => match.Groups["unit"].Length == 0 ? MeasureFault.NoUnit : MeasureFault.UnknownUnit,
        };

    Parsed<Ratio, MeasureFault> Failed(MeasureFault fault, string text) => new(fault, new Slip(fault, text) { Measure = kind });

    [GeneratedRegex(
        @"^(?<number>[0-9]+(\.[0-9]+)?)(/(?<over>[0-9]+(\.[0-9]+)?))?\s*(?<unit>|%|°|[A-Za-z][A-Za-z0-9/²]*)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Form();
}
