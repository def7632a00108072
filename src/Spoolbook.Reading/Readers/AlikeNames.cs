using System.Globalization;
using System.Text;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// Names that many disks take for the same: they differ only in capitals, or in whether an accent is stored with its letter or after
/// it. Checked only for names that papers carry in their file names.
/// </summary>
static class AlikeNames
{
    static readonly Lazy<Dictionary<Rune, (Rune Letter, Rune Mark)>> Accented = new(ReadTable);

    public static void Check(Production production, FindingList findings)
    {
        foreach (var (first, again) in Pairs(production.Rolls.Select(r => r.Name)))
        {
            findings.Add(Finding(first, again, "sheet/names-alike.message.rolls") with { Roll = again.Value });
        }

        foreach (var (first, again) in Pairs(production.Bodies.Select(b => b.Name)))
        {
            findings.Add(Finding(first, again, "sheet/names-alike.message.bodies"));
        }
    }

    static IEnumerable<(Located<string> First, Located<string> Again)> Pairs(IEnumerable<Located<string>> names) =>
        from same in names.DistinctBy(n => n.Value, StringComparer.Ordinal).GroupBy(n => Folded(n.Value), StringComparer.Ordinal)
        from again in same.Skip(1)
        select (same.First(), again);

    static Finding Finding(Located<string> first, Located<string> again, string message) =>
        new(
            SheetChecks.NamesAlike,
            Level.Error,
            Sentence.Of(message, ("first", Quote.Short(first.Value)), ("name", Quote.Short(again.Value))),
            again.Place
        )
        {
            Others = [new Related(first.Place, Sentence.Of("sheet/names-alike.other.first"))],
            Advice = Sentence.Of("sheet/names-alike.help"),
        };

    static string Folded(string name) => name.All(char.IsAscii) ? name.ToUpperInvariant() : Apart(name).ToUpperInvariant();

    /// <summary>
    /// Each accent after its letter. .NET does it with the system's language data, and this program runs without them.
    /// </summary>
    static string Apart(string name)
    {
        var apart = new StringBuilder();
        foreach (var rune in name.EnumerateRunes())
        {
            var (letter, marks) = (rune, "");
            while (Accented.Value.TryGetValue(letter, out var parts))
            {
                (letter, marks) = (parts.Letter, parts.Mark + marks);
            }

            apart.Append(letter.ToString()).Append(marks);
        }

        return apart.ToString();
    }

    static Dictionary<Rune, (Rune Letter, Rune Mark)> ReadTable()
    {
        using var stream = typeof(AlikeNames).Assembly.GetManifestResourceStream("Compositions.txt")
            ?? throw new InvalidOperationException("The table of compositions is not built into the assembly.");
        using var reader = new StreamReader(stream);
        var table = new Dictionary<Rune, (Rune Letter, Rune Mark)>();
        while (reader.ReadLine() is { } line)
        {
            if (!line.StartsWith('#'))
            {
                var codes = Array.ConvertAll(line.Split(' '), c => new Rune(
                    int.Parse(c, NumberStyles.HexNumber, CultureInfo.InvariantCulture)
                ));
                table[codes[2]] = (codes[0], codes[1]);
            }
        }

        return table;
    }
}
