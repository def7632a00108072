using System.Globalization;
using System.Text;
using Spoolbook.Papers.Typesetting;

namespace Spoolbook.Acceptance.Papers;

/// <summary>
/// Separates letters and accents by Unicode's table of compositions. Readers differ in how they join the two, and .NET
/// separates them only with the system's language data, which these tests run without.
/// </summary>
internal static class Accents
{
    static readonly Lazy<Dictionary<int, (int Letter, int Mark)>> _table = new(Read);

    public static string Apart(string text)
    {
        var apart = new StringBuilder();
        foreach (var letter in text.EnumerateRunes())
        {
            Add(letter.Value);
        }

        return apart.ToString();

        void Add(int letter)
        {
            if (_table.Value.TryGetValue(letter, out var pair))
            {
                Add(pair.Letter);
                Add(pair.Mark);
            }
            else
            {
                apart.Append(new Rune(letter));
            }
        }
    }

    static Dictionary<int, (int Letter, int Mark)> Read()
    {
        using var reader = new StreamReader(typeof(PdfRenderer).Assembly.GetManifestResourceStream("Compositions.txt")!);
        return reader
            .ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => line[0] != '#')
            .Select(line => line.Split(' ').Select(code => int.Parse(code, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToList())
            .ToDictionary(codes => codes[2], codes => (codes[0], codes[1]));
    }
}
