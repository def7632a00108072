using System.Globalization;
using System.Text;

namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>
/// Joins letters and the accents written after them. .NET does so only with the system's language data, and this
/// program runs without it to do the same on every machine.
/// </summary>
static class Composer
{
    static readonly Lazy<Dictionary<(int Letter, int PageMark), int>> Table = new(Read);

    public static IEnumerable<Rune> Compose(string text)
    {
        Rune? waiting = null;
        foreach (var character in text.EnumerateRunes())
        {
            if (waiting is { } letter && IsMark(character) && Table.Value.TryGetValue((letter.Value, character.Value), out var joined))
            {
                waiting = new Rune(joined);
                continue;
            }
            if (waiting is { } done)
            {
                yield return done;
            }

            waiting = character;
        }
        if (waiting is { } last)
        {
            yield return last;
        }
    }

    static bool IsMark(Rune character) => Rune.GetUnicodeCategory(character) == UnicodeCategory.NonSpacingMark;

    static Dictionary<(int Letter, int PageMark), int> Read()
    {
        using var stream = typeof(Composer).Assembly.GetManifestResourceStream("Compositions.txt")
            ?? throw new InvalidOperationException("The table of compositions is not built into the assembly.");
        using var reader = new StreamReader(stream);
        var table = new Dictionary<(int Letter, int PageMark), int>();
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('#'))
            {
                continue;
            }

            var codes = line.Split(' ').Select(code => int.Parse(code, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToList();
            table[(codes[0], codes[1])] = codes[2];
        }
        return table;
    }
}
