using System.Buffers;
using System.Text;
using System.Text.RegularExpressions;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// A formula as written in its sheet, in pieces: quoted words, columns of tables, and everything between.
/// <c>[@Head]</c> is the cell of the same row, as a spreadsheet shows it; in the file that is spelled out.
/// </summary>
static partial class FormulaText
{
    const string ThisRow = "#This Row";

    // Characters that a head may have only in brackets of its own.
    static readonly SearchValues<char> Special = SearchValues.Create("\t\n\r,:.[]#'\"{}$^&*+=-<>/");

    // Characters that a head may have only behind an apostrophe.
    const string Escaped = "[]#'";

    /// <summary>The formula as the file of a workbook spells it.</summary>
    /// <param name="table">Its table; null outside of one.</param>
    /// <param name="head">A column's head in the workbook, from its table and head in the house's terms.</param>
    /// <param name="words">What to write for quoted words.</param>
    /// <exception cref="FormatException">
    /// It cannot be read, or names cells by address, which breaks when something is put before them.
    /// </exception>
    public static string Spell(string formula, string? table, Func<string, string, string> head, Func<string, string> words) =>
        Spell(
            formula,
            column => Reference(column.Table ?? table ?? throw new FormatException($"No table is named in {formula}."), column, head),
            words
        );

    /// <summary>The same, with another way to spell the columns.</summary>
    public static string Spell(string formula, Func<ColumnPiece, string> reference, Func<string, string> words)
    {
        var spelled = new StringBuilder(formula.Length + 32);
        foreach (var piece in Pieces(formula))
        {
            spelled.Append(
                piece switch
                {
                    QuotedText quoted => $"\"{words(quoted.Text).Replace("\"", "\"\"", StringComparison.Ordinal)}\"",
                    ColumnPiece column => reference(column),
                    PlainPiece { Text: var plain } when !Address().IsMatch(plain) => plain,
                    _ => throw new FormatException(
                        $"Formulas look at columns and lines by their names, never at cells by number: {formula}"
                    ),
                }
            );
        }

        return spelled.ToString();
    }

    static string Reference(string table, ColumnPiece column, Func<string, string, string> head)
    {
        var called = head(table, column.Head);
        var written = Written(called);
        return column.OfThisRow ? $"{table}[[{ThisRow}],[{written}]]"
            : !called.AsSpan().ContainsAny(Special) ? $"{table}[{written}]"
            : $"{table}[[{written}]]";
    }

    static string Written(string head)
    {
        var written = new StringBuilder(head.Length);
        foreach (var c in head)
        {
            written.Append(Escaped.Contains(c, StringComparison.Ordinal) ? "'" : "").Append(c);
        }

        return written.ToString();
    }

    /// <summary>The pieces of a formula, in order.</summary>
    /// <exception cref="FormatException">An open quote or bracket, or a kind of reference that none of our sheets uses.</exception>
    public static IEnumerable<FormulaPiece> Pieces(string formula)
    {
        var plain = 0;
        for (var at = 0; at < formula.Length;)
        {
            if (formula[at] == '"')
            {
                yield return new PlainPiece(formula[plain..at]);
                yield return new QuotedText(Quoted(formula, ref at));
                plain = at;
            }
            else if (formula[at] == '[')
            {
                var table = at;
                while (table > plain && (char.IsLetterOrDigit(formula[table - 1]) || formula[table - 1] is '_' or '.'))
                {
                    table--;
                }

                yield return new PlainPiece(formula[plain..table]);
                var named = table == at ? null : formula[table..at];
                yield return Column(formula, named, ref at);
                plain = at;
            }
            else if (formula[at] is '\'' or '!')
            {
                throw new FormatException($"Formulas look at tables by their names, never at a sheet: {formula}");
            }
            else
            {
                at++;
            }
        }

        yield return new PlainPiece(formula[plain..]);
    }

    // From a quote to behind the one that ends it; two in a row are one character of the text.
    static string Quoted(string formula, ref int at)
    {
        var start = at + 1;
        for (at = start; ; at++)
        {
            if (at >= formula.Length)
            {
                throw new FormatException($"A quote is left open in {formula}");
            }

            if (formula[at] == '"' && !(at + 1 < formula.Length && formula[at + 1] == '"' && ++at > 0))
            {
                return formula[start..at++].Replace("\"\"", "\"", StringComparison.Ordinal);
            }
        }
    }

    static ColumnPiece Column(string formula, string? table, ref int at)
    {
        at++;
        var row = formula[at] == '@';
        at += row ? 1 : 0;
        if (formula[at] != '[')
        {
            return formula[at] == '#' ? throw Unknown(formula) : new ColumnPiece(table, row, Head(formula, ref at));
        }

        at++;
        var ofKind = formula[at] == '#';
        var head = Head(formula, ref at);
        if (head == ThisRow && formula[at..].StartsWith(",[", StringComparison.Ordinal))
        {
            (row, ofKind, at) = (true, false, at + 2);
            head = Head(formula, ref at);
        }

        if (at >= formula.Length || formula[at] != ']' || ofKind)
        {
            throw Unknown(formula);
        }

        at++;
        return new ColumnPiece(table, row, head);
    }

    static FormatException Unknown(string formula) => new($"A reference to a table is of a kind that no sheet uses in {formula}");

    // From the first letter of a head to behind its closing bracket.
    static string Head(string formula, ref int at)
    {
        var head = new StringBuilder();
        for (; ; at++)
        {
            if (at >= formula.Length)
            {
                throw new FormatException($"A bracket is left open in {formula}");
            }

            if (formula[at] == ']')
            {
                at++;
                return head.ToString();
            }

            at += formula[at] == '\'' ? 1 : 0;
            head.Append(formula[at]);
        }
    }

    // K5, $K$5, K:K, 5:5; but no function such as LOG10(, and no name with digits behind more than three letters.
    [GeneratedRegex(
        @"(?<![A-Za-z0-9_.])(?:\$?[A-Za-z]{1,3}\$?[0-9]+|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}|\$?[0-9]+:\$?[0-9]+)(?![A-Za-z0-9_.(])"
    )]
    private static partial Regex Address();
}
