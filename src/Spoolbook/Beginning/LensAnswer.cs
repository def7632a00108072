using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Spoolbook.Beginning;

/// <summary>A lens as its ring says: <c>25mm 1.4-22 1.5ft prism</c>. Only the first word is needed.</summary>
/// <param name="Name">Its name in the log.</param>
internal sealed partial record LensAnswer(string Name)
{
    public const string Example = "10mm 1.6-22 1ft, 25mm 1.4-22 1.5ft, 75mm 2.5-22 3ft";

    public string? Focal { get; private init; }

    public string? Widest { get; private init; }

    public string? Smallest { get; private init; }

    public string? Nearest { get; private init; }

    public string? MadeFor { get; private init; }

    public string What { get; private init; } = "";

    /// <summary>The lenses of a line, between commas.</summary>
    public static ImmutableArray<LensAnswer> Parse(string text) =>
        [.. text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(One)];

    static LensAnswer One(string text)
    {
        var words = text.Split((char[])[' ', ':'], StringSplitOptions.RemoveEmptyEntries);
        var lens = new LensAnswer(words.FirstOrDefault("lens"));
        lens = Millimetres().Match(lens.Name) is { Success: true } focal ? lens with { Focal = focal.Groups[1].Value } : lens;
        return words.Skip(1).Aggregate(lens, (so, word) => so.With(word));
    }

    LensAnswer With(string word) =>
        Ring().Match(word) is { Success: true } ring
            ? this with
            {
                Widest = ring.Groups[1].Value,
                Smallest = ring.Groups[2].Success ? ring.Groups[2].Value : null,
            }
        : Distance().IsMatch(word) ? this with { Nearest = word }
        : Millimetres().Match(word) is { Success: true } focal ? this with { Focal = focal.Groups[1].Value }
        : word.ToLowerInvariant() is "prism" or "air" ? this with { MadeFor = word.ToLowerInvariant() }
        : this with { What = What.Length == 0 ? word : $"{What} {word}" };

    [GeneratedRegex("^([0-9]+(?:[.][0-9]+)?)mm$", RegexOptions.IgnoreCase)]
    private static partial Regex Millimetres();

    [GeneratedRegex("^[fFtT]?/?([0-9]+(?:[.][0-9]+)?)(?:[-–]([0-9]+(?:[.][0-9]+)?))?$")]
    private static partial Regex Ring();

    [GeneratedRegex("^[0-9]+(?:[.][0-9]+)?(?:ft|m|cm|in)$", RegexOptions.IgnoreCase)]
    private static partial Regex Distance();
}
