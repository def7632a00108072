using System.Globalization;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Texts;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Trees;

/// <summary>Characters that no text may hold: each is a finding at its place, and the value is read without it.</summary>
static class StrayCharacters
{
    /// <summary>The longest text of one value, in characters: several pages of a note.</summary>
    public const int MostLength = 20_000;

    // Nobody reads more findings than this about one value.
    const int MostFound = 5;

    /// <summary>The value without its stray characters, and a finding for each.</summary>
    /// <param name="start">Where the value begins in the file, its quotes included.</param>
    /// <param name="end">The first character after it.</param>
    public static string Clean(SourceFile source, int start, int end, string value, ScalarStyle style, FindingList findings)
    {
        if (value.Length > MostLength)
        {
            findings.Add(
                SheetChecks.TooLarge,
                Sentence.Of("sheet/too-large.message.text", ("n", value.Length), ("most", MostLength)),
                source.At(start, end),
                Sentence.Of("sheet/too-large.help.text")
            );
            value = value[..WholeLetters.At(value, MostLength)];
        }

        if (TextCharacters.AreAllowed(value))
        {
            return value;
        }

        var found = Written(source.Text, start, end, style).DistinctBy(c => c.Code).Take(MostFound).ToList();
        foreach (var (code, from, to) in found)
        {
            Add(code, from, to);
        }

        if (found.Count == 0)
        {
            Add(TextCharacters.FirstRefused(value)!.Value, start, end);
        }

        return TextCharacters.Without(value);

        void Add(int code, int from, int to) =>
            findings.Add(
                SheetChecks.BadCharacter,
                Sentence.Of(
                    "sheet/bad-character.message",
                    ("text", Quote.Short(TextCharacters.Without(value))),
                    ("number", TextCharacters.Number(code)),
                    ("name", TextCharacters.Name(code))
                ),
                source.At(from, to),
                Help(code)
            );
    }

    static Sentence Help(int code) =>
        Sentence.Of(
            TextCharacters.IsDirection(code) ? "sheet/bad-character.help.direction"
            : code is 0x0B or 0x0C or 0x85 ? "sheet/bad-character.help.line"
            : "sheet/bad-character.help.other"
        );

    /// <summary>The forbidden characters as the file writes them: as themselves, or as an escape in double quotes.</summary>
    static IEnumerable<(int Code, int From, int To)> Written(string text, int start, int end, ScalarStyle style)
    {
        end = Math.Min(end, text.Length);
        for (var at = start; at < end;)
        {
            var (code, length) =
                style == ScalarStyle.DoubleQuoted && text[at] == '\\'
                    ? Escape(text, at, end)
                    : TextCharacters.First(text.AsSpan(at, end - at));
            if (!TextCharacters.IsAllowed(code))
            {
                yield return (code, at, at + length);
            }

            at += length;
        }
    }

    /// <summary>The character that an escape in double quotes writes (YAML 1.2.2, 5.7), and its length. Half pairs are joined.</summary>
    static (int Code, int Length) Escape(string text, int at, int end)
    {
        var (code, length) = One(text, at, end);
        if (code is < 0xD800 or > 0xDBFF || at + length >= end || text[at + length] != '\\')
        {
            return (code, length);
        }

        var (low, more) = One(text, at + length, end);
        return low is >= 0xDC00 and <= 0xDFFF ? (char.ConvertToUtf32((char)code, (char)low), length + more) : (code, length);
    }

    static (int Code, int Length) One(string text, int at, int end)
    {
        var letter = at + 1 < end ? text[at + 1] : '\\';
        var digits = letter switch
        {
            'x' => 2,
            'u' => 4,
            'U' => 8,
            _ => 0,
        };
        if (digits > 0)
        {
            return
                at + 2 + digits <= end
                && int.TryParse(text.AsSpan(at + 2, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var code)
                ? (code, 2 + digits)
                : (' ', 2);
        }

        // Only those that write a forbidden character.
        var named = letter switch
        {
            '0' => 0x00,
            'a' => 0x07,
            'b' => 0x08,
            'v' => 0x0B,
            'f' => 0x0C,
            'e' => 0x1B,
            'N' => 0x85,
            _ => 0x20,
        };
        return (named, 2);
    }
}
