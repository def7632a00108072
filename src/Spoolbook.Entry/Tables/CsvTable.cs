using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Spoolbook.Entry.Tables;

/// <summary>
/// A table in a text file: fields between commas, semicolons or tabs, in double quotes where they contain one of these
/// or a line end; a quote inside quotes is doubled (RFC 4180).
/// </summary>
static class CsvTable
{
    const int MostAbove = 50;
    static readonly char[] _separators = [',', ';', '\t'];

    /// <summary>The separator: the character that splits a line into the most known heads.</summary>
    public static char SeparatorOf(string text, TakeHeads heads)
    {
        var lines = text.Split('\n', MostAbove + 1).Take(MostAbove).ToList();
        return _separators.MaxBy(s => lines.Max(line => line.Split(s).Count(field => heads.Column(field.Trim().Trim('"')) is not null)));
    }

    public static Table Read(string name, string text, char separator)
    {
        var rows = ImmutableArray.CreateBuilder<Row>();
        var at = 0;
        var line = 1;
        while (at < text.Length)
        {
            var first = line;
            var cells = ImmutableArray.CreateBuilder<Cell>();
            var column = 0;
            while (true)
            {
                var value = Field(name, text, separator, ref at, ref line, column);
                if (value.Length > 0)
                {
                    cells.Add(new Cell(column, Address(name, first, column), CellKind.Words, value));
                }

                column++;
                if (at >= text.Length || text[at] != separator)
                {
                    break;
                }

                at++;
            }

            SkipLineEnd(text, ref at, ref line);
            if (cells.Count > 0)
            {
                Limits.CheckRows(name, rows.Count);
                Limits.CheckColumns(name, first, column);
                rows.Add(new Row(first, string.Create(CultureInfo.InvariantCulture, $"{name}:{first}"), cells.ToImmutable()));
            }
        }

        return new Table(name, rows.ToImmutable()) { IsText = true };
    }

    static string Address(string name, int line, int column) =>
        string.Create(CultureInfo.InvariantCulture, $"{name}:{line}:{Cell.Letters(column)}");

    static string Field(string name, string text, char separator, ref int at, ref int line, int column)
    {
        if (at >= text.Length || text[at] != '"')
        {
            var end = text.AsSpan(at).IndexOfAny(separator, '\r', '\n');
            var plain = end < 0 ? text[at..] : text.Substring(at, end);
            at += plain.Length;
            return plain.Trim();
        }

        var (opened, value) = (line, new StringBuilder());
        for (at++; at < text.Length; at++)
        {
            if (text[at] == '"')
            {
                if (at + 1 >= text.Length || text[at + 1] != '"')
                {
                    break;
                }

                at++;
            }

            line += IsLineEnd(text, at) ? 1 : 0;
            value.Append(text[at]);
        }

        if (at >= text.Length)
        {
            throw new TableFault(
                Address(name, opened, column),
                "A quote is opened here and never closed.",
                "Close it with \" at the end of the field; a quote inside quotes is written twice."
            );
        }

        at++;
        if (at < text.Length && text[at] != separator && text[at] is not ('\r' or '\n'))
        {
            throw new TableFault(
                Address(name, opened, column),
                "Something follows the quote that closes this field.",
                "Put the whole field in quotes, and write a quote inside it twice."
            );
        }

        return value.Replace("\r\n", "\n").Replace('\r', '\n').ToString().Trim();
    }

    static bool IsLineEnd(string text, int at) => text[at] == '\n' || (text[at] == '\r' && !(at + 1 < text.Length && text[at + 1] == '\n'));

    static void SkipLineEnd(string text, ref int at, ref int line)
    {
        if (at < text.Length)
        {
            at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
            line++;
        }
    }
}
