using System.Text.RegularExpressions;

namespace Spoolbook.Film;

/// <summary>The ways to write a speed.</summary>
static partial class SpeedForm
{
    const int LongestNumber = 15;
    static readonly Ratio _fastest = 100_000;
    static readonly Ratio _slowed = new(1000, 1001);

    public static Parsed<Speed, SpeedFault> Read(string text)
    {
        var written = text.Trim();
        var match = Form().Match(written);
        if (FaultOf(written, match) is { } fault)
        {
            return Failed(fault, text);
        }

        var over = match.Groups["over"];
        var number = DecimalText.Read(match.Groups["number"].Value);
        var speed = over.Success ? number / DecimalText.Read(over.Value) : Slowed(match.Groups["number"].Value) ?? number;
        return FaultOf(speed) is { } outOfRange ? Failed(outOfRange, text) : new Speed(speed);
    }

    public static string Write(Speed speed)
    {
        var exact = speed.FramesPerSecond;
        var text = exact.ToShortText(3);
        return Read(text) is { Succeeded: true } parsed && parsed.Value == speed ? text : exact.ToString();
    }

    static Parsed<Speed, SpeedFault> Failed(SpeedFault fault, string text) => new(fault, text);

    static SpeedFault? FaultOf(string written, Match match) =>
        written switch
        {
            "" => SpeedFault.Empty,
            _ when written.StartsWith('-') => SpeedFault.NotAboveZero,
            _ when written.Contains(',', StringComparison.Ordinal) => SpeedFault.DecimalComma,
            _ when !match.Success => SpeedFault.NotASpeed,
            _ when match.Groups["number"].Length > LongestNumber || match.Groups["over"].Length > LongestNumber => SpeedFault.TooFast,
            _ when match.Groups["over"] is { Success: true } over && DecimalText.Read(over.Value).Sign == 0 => SpeedFault.OverZero,
            _ => null,
        };

    static SpeedFault? FaultOf(Ratio framesPerSecond) =>
        framesPerSecond.Sign == 0 ? SpeedFault.NotAboveZero
        : framesPerSecond > _fastest ? SpeedFault.TooFast
        : null;

    // Video gear writes 24000/1001 as 23.976 or 23.98. Read as a decimal, an hour would drift by frames.
    static Ratio? Slowed(string number) =>
        number switch
        {
            "23.976" or "23.98" => 24 * _slowed,
            "29.97" => 30 * _slowed,
            "47.952" or "47.95" => 48 * _slowed,
            "59.94" => 60 * _slowed,
            "119.88" => 120 * _slowed,
            _ => null,
        };

    [GeneratedRegex(@"^(?<number>[0-9]+(\.[0-9]+)?)(\s*/\s*(?<over>[0-9]+(\.[0-9]+)?))?(\s*(fps|fr/s))?$", RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
