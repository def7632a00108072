using System.Text.RegularExpressions;

namespace Spoolbook.Film;

/// <summary>A number with a unit.</summary>
/// <param name="what">What is measured, after "is not".</param>
/// <param name="forms">What to write.</param>
/// <param name="units">What one of each unit is worth; includes the empty unit where a bare number is allowed.</param>
/// <param name="most">The largest value allowed; null for no limit.</param>
/// <param name="aboveZero">Whether zero is a mistake.</param>
sealed partial class MeasureForm(string what, string forms, Dictionary<string, Ratio> units, Ratio? most = null, bool aboveZero = false)
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

    Parsed<Ratio, MeasureFault> Failed(MeasureFault fault, string text) => new(fault, Advice(fault, text));

    string Advice(MeasureFault fault, string text) =>
        fault switch
        {
            MeasureFault.Empty => $"there is nothing where {what} should stand: {forms}",
            MeasureFault.NoUnit => $"'{text}' has no unit: {forms}",
            MeasureFault.UnknownUnit => $"'{text}' has a unit that does not measure {what}: {forms}",
            MeasureFault.DecimalComma => $"'{text}' has a comma: write the decimals after a point",
            MeasureFault.Negative => $"'{text}' is below nothing: {forms}",
            MeasureFault.NotAboveZero => $"'{text}' is nothing, and must be more: {forms}",
            MeasureFault.OverZero => $"'{text}' divides by nothing: {forms}",
            MeasureFault.TooMuch => $"'{text}' is more than there can be: {forms}",
            _ => $"'{text}' is not {what}: {forms}",
        };

    [GeneratedRegex(
        @"^(?<number>[0-9]+(\.[0-9]+)?)(/(?<over>[0-9]+(\.[0-9]+)?))?\s*(?<unit>|%|°|[A-Za-z][A-Za-z0-9/²]*)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Form();
}
