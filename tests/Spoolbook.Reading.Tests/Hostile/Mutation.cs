using CsCheck;

namespace Spoolbook.Reading.Tests.Hostile;

/// <summary>One thing that a slip of the hand, a bad merge or a bad disk does to a text.</summary>
static class Mutation
{
    static readonly string[] _oddities =
    [
        "\t",
        "\0",
        "\u2028",
        "\u0085",
        "\uFEFF",
        "\u202E",
        "😀",
        "é",
        ": ",
        "- ",
        "{",
        "}",
        "[",
        "]",
        "'",
        "\"",
        "#",
        "&a ",
        "*a",
        "!!x ",
        "|",
        ">",
        "? ",
        "---",
        "...",
        "%",
        "99999999999999999999",
        "-1",
        "1e309",
        "0",
        "1/0",
        "NaN",
        "yes",
        "null",
        "~",
        "2026-02-30",
        "25:99",
        "+",
        "ft",
        "<<: ",
        ", ",
        "\\",
        "\r",
        "\n",
        "spoolbook: 2",
        "\"\\uD800\"",
        "\"\\U0010FFFF\\0\"",
        "!!binary x",
        "&a [*a]",
        "<<: *a",
        "\u2029",
        "\uFFFF",
        "0x7FFFFFFFFFFFFFFF",
        "1_000",
        ".inf",
        "-.inf",
        "-0",
        "[1, 2]",
        "{a: b}",
        "[]",
        "no",
        "1e99",
        "18446744073709551616fr",
        "999999999+39",
        "-12+00",
        "99999999999ft",
        "0fr",
        "9999-12-31",
        "\u0301",
        "\u200D",
        "\u05D0",
        "\uFFFE",
    ];

    /// <summary>Copies of a text, each spoilt in a few such ways.</summary>
    public static Gen<string> Of(string text) =>
        Gen.Select(
                Gen.Int[0, 15].Select(kind => Math.Max(kind - 9, 0) is > 0 and var harsh ? harsh + 5 : kind % 6),
                Gen.Int[0, 1_000_000],
                Gen.Int[0, 1_000_000],
                Gen.Int[0, _oddities.Length - 1].Select(i => _oddities[i])
            )
            .Array[1, 4]
            .Select(steps => steps.Aggregate(text, (at, step) => Step(at, step.Item1, step.Item2, step.Item3, step.Item4)));

    static string Step(string text, int kind, int a, int b, string oddity)
    {
        var lines = text.Split('\n').ToList();
        var (i, j) = (a % lines.Count, b % lines.Count);
        switch (kind)
        {
            case 0:
                lines.RemoveAt(i);
                break;
            case 1:
                lines.Insert(j, lines[i]);
                break;
            case 2:
                (lines[i], lines[j]) = (lines[j], lines[i]);
                break;
            case 3:
                lines[i] = new string(' ', b % 7) + lines[i].TrimStart();
                break;
            case 4:
                var at = b % (lines[i].Length + 1);
                lines[i] = lines[i][..at] + oddity + lines[i][at..];
                break;
            case 5:
                lines[i] = Replaced(lines[i], b, oddity);
                break;
            default:
                return Harsh(lines, kind, i, b, oddity);
        }

        return string.Join('\n', lines);
    }

    // No hand does this, but a disk, a program or an attacker does.
    static string Harsh(List<string> lines, int kind, int i, int b, string oddity)
    {
        var much = (b % 10) switch
        {
            0 => 100_000,
            1 or 2 => 2_000,
            _ => 60,
        };
        switch (kind)
        {
            case 6:
                return string.Join('\r', lines);
            case 7:
                lines[i] = Replaced(lines[i], b, string.Concat(Enumerable.Repeat(b % 2 == 0 ? "[" : "{a: ", much)));
                break;
            case 8:
                lines[i] = Replaced(lines[i], b, new string("x9é "[b % 4], much));
                break;
            case 9:
                lines.InsertRange(i, Laughter(b % 12));
                break;
            case 10:
                return string.Join('\n', lines.Select(line => line.Replace("  ", "\t", StringComparison.Ordinal)));
            default:
                // A full disk cuts the file off in the middle.
                var text = string.Join('\n', lines);
                return text[..(b % (text.Length + 1))] + oddity;
        }

        return string.Join('\n', lines);
    }

    // Each name expands to ten of the one before it.
    static IEnumerable<string> Laughter(int rounds) =>
        Enumerable
            .Range(0, rounds + 1)
            .Select(n => n == 0 ? "laugh0: &l0 [ha, ha]" : $"laugh{n}: &l{n} [{string.Join(", ", Enumerable.Repeat($"*l{n - 1}", 10))}]");

    static string Replaced(string line, int which, string oddity)
    {
        var words = line.Split(' ');
        words[which % words.Length] = oddity;
        return string.Join(' ', words);
    }
}
