using System.Globalization;

namespace Spoolbook.Fuzz.Mutations;

/// <summary>Texts that nobody expects.</summary>
internal static class HostileTexts
{
    const int LongToken = 20_000;

    static readonly string[] _emoji = ["😀", "👩‍👩‍👧‍👦", "🏴󠁧󠁢󠁥󠁮󠁧󠁿", "🇩🇪", "❤️", "👍🏽", "𝔘", "𠀀", "\U0010FFFF"];

    static readonly string[] _hidden =
    [
        "\0",
        "\u0001",
        "\u0007",
        "\b",
        "\v",
        "\f",
        "\u001b[2J",
        "\u001b]0;x\a",
        "\u007f",
        "\u0085",
        "\u009b31m",
        "\u00a0",
        "\u00ad",
        "\u061c",
        "\u200b",
        "\u200d",
        "\u200e",
        "\u202e",
        "\u2028",
        "\u2029",
        "\u2066",
        "\u2069",
        "\ufeff",
        "\ufffe",
        "\uffff",
        "\ufffd",
    ];

    static readonly string[] _surrogates = ["\ud800", "\udc00", "\udbff", "\ud83d", "\ude00\ud83d", "\ud800\ud800"];

    static readonly string[] _letters =
    [
        "שלום",
        "مرحبا",
        "نَصّ",
        "हिन्दी",
        "ไทย",
        "中文",
        "한국어",
        "Ǆ",
        "ß",
        "İ",
        "ı",
        "ﬀ",
        "e\u0301\u0302\u0303",
        "Z\u0351\u0350\u0357",
        "ẞ",
        "Ω",
        "½",
        "²",
        "٣",
        "１２",
    ];

    static readonly string[] _signs =
    [
        "{",
        "}",
        "[",
        "]",
        ":",
        ": ",
        ",",
        "#",
        " #",
        "&a",
        "*a",
        "!",
        "!!str ",
        "|",
        ">",
        "%",
        "@",
        "`",
        "'",
        "\"",
        "\\",
        "\\u",
        "<",
        ">",
        "&",
        "&amp;",
        "<!--",
        "-->",
        "]]>",
        "<![CDATA[",
        "{{",
        "}}",
        "=",
        "=1+1",
        "$",
        "${x}",
        "../",
        "..",
        "/",
        "\\x00",
        "\t",
        "\r",
        "\r\n",
        "\n\n",
        "---",
        "...",
        "?",
        "~",
        "%s",
        "{0}",
    ];

    static readonly string[] _numbers =
    [
        "0",
        "-0",
        "-1",
        "1",
        "0.0000000001",
        "1e9",
        "1e999",
        "NaN",
        "Infinity",
        "-Infinity",
        "2147483647",
        "2147483648",
        "-2147483648",
        "4294967296",
        "9223372036854775807",
        "9223372036854775808",
        "-9223372036854775808",
        "18446744073709551616",
        "79228162514264337593543950335",
        "999999",
        "1000000",
        "99999999",
        "999999999999",
        "0x10",
        "1_000",
        "1,5",
        "1.5.5",
        "1/0",
        "0/1",
        "1/3",
        "999999/999998",
        "1/999999999999",
        "00000000000000000001",
        "1.",
        ".5",
        "+1",
        "٣",
        "1 1/2",
        "100%",
        "101%",
        "0.333333333333",
        "123456789012",
        "24000/1001",
        "0+00",
        "0+40",
        "99999999+39",
        "1+999999",
        "9999-12-31",
        "0001-01-01",
        "2026-02-29",
        "24:00",
        "23:59",
        "9999-12-31 23:59",
        "0001-01-01 00:00",
    ];

    public static string Any(Chance chance) =>
        chance.Below(8) switch
        {
            0 => Run(chance, _emoji),
            1 => Run(chance, _hidden),
            2 => Run(chance, _surrogates),
            3 => Run(chance, _letters),
            4 or 5 => Run(chance, _signs),
            6 => Number(chance),
            _ => Token(chance),
        };

    public static string Number(Chance chance) =>
        chance.Below(4) switch
        {
            0 => chance.Below(1000).ToString(CultureInfo.InvariantCulture),
            1 => new string((char)('0' + chance.Below(10)), chance.Length(60)),
            2 => chance.Of(_numbers)
                + chance.Of(["", "ft", "fr", "m", "s", "min", "h", "mm", "in", "%", "fps", "ft 6in", " 1/3", "+20", "/9"]),
            _ => chance.Of(_numbers),
        };

    static string Run(Chance chance, string[] of) =>
        chance.OneIn(20)
            ? string.Concat(Enumerable.Repeat(chance.Of(of), chance.Below(2_000)))
            : string.Concat(Enumerable.Range(0, 1 + chance.Below(4)).Select(_ => chance.Of(of)));

    static string Token(Chance chance) =>
        string.Concat(
            Enumerable.Repeat(
                chance.OneIn(2) ? "x" : chance.Word(),
                1 + (chance.OneIn(10) ? chance.Below(LongToken / 10) : chance.Below(60))
            )
        );
}
