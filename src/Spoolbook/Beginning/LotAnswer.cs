using System.Text.RegularExpressions;

namespace Spoolbook.Beginning;

/// <summary>
/// A lot of raw stock as a person reads it off the cans: <c>N250-A: Colour negative 250 D, 250, daylight, ecn-2, 100ft, 6</c>. Each
/// part is known by its form, so that the order is free but for stock before process and index before cans.
/// </summary>
internal sealed partial record LotAnswer(string Name, string Stock)
{
    public string? Index { get; private init; }

    public string? Balance { get; private init; }

    public string? Process { get; private init; }

    public string? Length { get; private init; }

    public string? Units { get; private init; }

    public string? Perforation { get; private init; }

    public string? Expires { get; private init; }

    public static Answered<LotAnswer> Parse(string text, IReadOnlyCollection<string> taken)
    {
        var (name, parts) = NamedParts.Of(text);
        var lot = new LotAnswer(name ?? "", "");
        foreach (var part in parts)
        {
            if (lot.With(part) is not { } more)
            {
                return Answered<LotAnswer>.Not($"'{part}' is one thing too many in the lot. Write it as in: {Example}");
            }

            lot = more;
        }

        string[] missing =
        [
            .. lot.Stock.Length == 0 ? (string[])["the stock's name"] : [],
            .. lot.Index is null ? (string[])["its exposure index (250)"] : [],
            .. lot.Process is null ? (string[])["its process (ecn-2)"] : [],
            .. lot.Length is null ? (string[])["film in a can (100ft)"] : [],
            .. lot.Units is null ? (string[])["how many cans (6)"] : [],
        ];
        return missing.Length > 0
            ? Answered<LotAnswer>.Not($"The lot lacks {string.Join(", ", missing)}. Write it as in: {Example}")
            : Answered<LotAnswer>.As(lot.Name.Length > 0 ? lot : lot with { Name = lot.OwnName(taken) });
    }

    public const string Example = "N250-A: Colour negative 250 D, 250, daylight, ecn-2, 100ft, 6";

    LotAnswer? With(string part) =>
        Numbered().Match(part) is { Success: true } index
            ? Index is null
                ? this with
                {
                    Index = index.Groups[1].Value,
                }
                : null
            : Cans().Match(part) is { Success: true } cans
                ? Units is null
                    ? this with
                    {
                        Units = cans.Groups[1].Value,
                    }
                    : null
                : Whole().IsMatch(part)
                    ? Index is null
                        ? this with
                        {
                            Index = part,
                        }
                        : Units is null
                            ? this with
                            {
                                Units = part,
                            }
                            : null
                    : BalanceOf(part) is { } balance
                        ? Balance is null
                            ? this with
                            {
                                Balance = balance,
                            }
                            : null
                        : Lengths().IsMatch(part)
                            ? Length is null
                                ? this with
                                {
                                    Length = part.Replace(" ", "", StringComparison.Ordinal),
                                }
                                : null
                            : Rows().IsMatch(part)
                                ? Perforation is null
                                    ? this with
                                    {
                                        Perforation = part.ToUpperInvariant(),
                                    }
                                    : null
                                : Months().IsMatch(part)
                                    ? Expires is null
                                        ? this with
                                        {
                                            Expires = part,
                                        }
                                        : null
                                    : Stock.Length == 0
                                        ? this with
                                        {
                                            Stock = part,
                                        }
                                        : Process is null
                                            ? this with
                                            {
                                                Process = part,
                                            }
                                            : null;

    static string? BalanceOf(string part) =>
        part.ToLowerInvariant() switch
        {
            "daylight" => "daylight",
            "tungsten" => "tungsten",
            "none" or "black and white" or "black-and-white" or "b&w" => "none",
            _ => null,
        };

    // The stock's first letter, its index, and a letter for the lot.
    string OwnName(IReadOnlyCollection<string> taken) =>
        Enumerable
            .Range('A', 26)
            .Select(letter => $"{char.ToUpperInvariant(Stock[0])}{Index}-{(char)letter}")
            .First(name => !taken.Contains(name) || name.EndsWith('Z'));

    [GeneratedRegex("^(?:ei|iso|asa) ?([0-9]+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Numbered();

    [GeneratedRegex("^x? ?([0-9]+) ?(?:x|cans?|rolls?|spools?|units?)$", RegexOptions.IgnoreCase)]
    private static partial Regex Cans();

    [GeneratedRegex("^[0-9]+$")]
    private static partial Regex Whole();

    [GeneratedRegex("^[0-9]+(?:[.][0-9]+)? ?(?:ft|m|fr)$|^[0-9]+[+][0-9]+$")]
    private static partial Regex Lengths();

    [GeneratedRegex("^[12]r$", RegexOptions.IgnoreCase)]
    private static partial Regex Rows();

    [GeneratedRegex("^[0-9]{4}-[0-9]{2}(?:-[0-9]{2})?$")]
    private static partial Regex Months();
}
