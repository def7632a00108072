using System.Text;
using System.Text.RegularExpressions;
using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Fuzz.Mutations;

namespace Spoolbook.Fuzz.Targets;

/// <summary>
/// What the trade writes in its own way. An input is lines of <c>key: value</c>: each value takes the place of what that key
/// says everywhere in a sound production, and goes to the parsers of film by itself.
/// </summary>
internal sealed partial class FormsTarget : ITarget
{
    const int MostValues = 12;

    public string Name => "forms";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. FormKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        var text = SmallShoot.Text;
        foreach (var line in Encoding.UTF8.GetString(input).Split('\n').Take(MostValues))
        {
            var colon = line.IndexOf(": ", StringComparison.Ordinal);
            var (key, value) = colon < 0 ? ("", line) : (line[..colon].Trim(), line[(colon + 2)..]);
            Parse(value);
            if (Key().IsMatch(key))
            {
                text = Regex.Replace(
                    text,
                    $@"(?<=[ {{\n]{key}: )(""[^""]*""|[^,}}\]\[{{\n]+)",
                    _ => Quoted(value),
                    RegexOptions.CultureInvariant
                );
            }
        }

        var found = Pipeline.Run(SmallShoot.With(text)).Found;
        Printing.All(found);
        return found.Findings.Select(f => f.Check).Distinct();
    }

    static void Parse(string value)
    {
        _ = FilmLength.Parse(value);
        _ = FilmLength.Parse(value, Gauge.Film16);
        _ = Speed.Parse(value);
        _ = Stop.Parse(value);
        _ = Stops.Parse(value);
        _ = Distance.Parse(value);
        _ = ReciprocityPoint.Parse(value);
        _ = Measure.Seconds(value);
        _ = Measure.Part(value);
        _ = Measure.Lux(value);
        _ = Measure.Candelas(value);
        _ = Measure.Millimetres(value);
        _ = Measure.Degrees(value);
        _ = Measure.Number(value);
        _ = Measure.Density(value);
    }

    static string Quoted(string value) =>
        "\""
        + string.Concat(
            value.Select(c =>
                c is '"' or '\\' ? "\\" + c
                : c < ' ' || char.IsSurrogate(c) ? $"\\u{(int)c:X4}"
                : c.ToString()
            )
        )
        + "\"";

    [GeneratedRegex("^[a-z-]+$", RegexOptions.CultureInvariant)]
    private static partial Regex Key();
}
