using System.Text;

namespace Spoolbook.Papers.Ledger;

/// <summary>A table as comma-separated text, after RFC 4180.</summary>
internal sealed class CsvText
{
    const string LineEnd = "\r\n";

    readonly StringBuilder _text = new();

    /// <summary>Adds a row.</summary>
    public void Add(IEnumerable<string> cells) => _text.AppendJoin(',', cells.Select(Field)).Append(LineEnd);

    public override string ToString() => _text.ToString();

    // RFC 4180, 2.6 and 2.7: quotes around what holds a comma, a quote or a line end, and a quote inside twice. Blanks at an end
    // are kept by quotes too: some readers drop them.
    static string Field(string cell) =>
        cell.AsSpan().ContainsAny(",\"\r\n") || cell != cell.Trim() ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
