using System.Globalization;
using System.Text;

namespace Spoolbook.Papers.Workbook;

/// <summary>The reference page of the workbook, from what was written into some workbooks.</summary>
static class WorkbookPage
{
    const string Before = """
        # The footage workbook

        `make` writes `footage.xlsx` beside the other papers. This page says where in it everything stands. It is written by the program itself (`scripts/reference-workbook`), and the tests hold it against the file.

        ## How it is built

        - **Every total and ratio is a live formula**; what is typed is what somebody wrote down: the stretches of film, the takes, the lots, the rates. Change one of those and the rest follows.
        - **Summary answers a producer**: money, film left by stock, whether it lasts, shots missing, with two charts. Figures, the last sheet, has what it is made of. Every other sheet holds the tables that are read together, one below the other.
        - **A table has four rows above its data**: its heading, what it is about, the sums of the rows that a filter shows, and the heads. Write below the last row and the table grows, with its formulas and every sum that looks at it; where another table is below, insert a row first.
        - **What is printed is at the left.** Columns that only lead to a figure, such as the frames of a length, are at the right in grey, and not printed.
        - **Film holds every stretch of film once.** The other sheets add it up by exact comparison, so that a scene called `7*` is no pattern.
        - **Formulas look at names, never at places**: at the columns of tables (`Rolls[Good]`; `[@Good]` is the cell of the same row) and at defined names, which every figure has that another formula reads. A column or a line put before them shifts nothing.
        - Tables and defined names are called the same in every production. What can be read, the names of sheets, heads, labels and the words that stand for something in cells, is in the production's language, and the formulas look for it there: `Rolls[Good]` on this page is `Rolls[Kopierer]` in a German workbook. This page has the house's English, and the German beside it; other words, or another language, come from a words file of your own (`book.` in `words.en.txt`).
        - The first column stays in sight, and where a sheet is one table the heads do too. The heads of a sheet's last table, the longest, are on every printed page that it goes on to. A sheet is printed across the paper of the production, one page wide; the foot has the title, the sheet and the page.
        - Words stay words, whatever they begin with: `=`, `+`, `-` and `@` are no formulas.
        - The same production gives the same bytes. What a formula comes to is in the file too, for previewers that do not calculate.

        ## Lengths

        **A length is counted in frames and read as on the papers.** `Rolls[Good frames]` holds 8812, a number that adds up; `Rolls[Good]` is a formula over it that reads `220+12`. Where the production has `units: metres` it reads `66.93`, a number with two decimals, and the accounts of a row add up as printed: where rounding one of them by itself would spoil the sum, its formula adds or takes a centimetre. Sum, compare and divide the frames; a defined name of a length, such as `StockToShoot`, is of its frames. Screen time is a part of a day, shown as minutes and seconds.

        ## What may be edited

        Whatever is typed: the formulas look at it again. Cells with a choice of words, and whole numbers, are checked down to 500 rows below the last table of a sheet; a word or number that the formulas would not understand is refused, a name that the production does not have is asked for. Takes typed into the sheet Takes go back into the roll files with `import` (see `src/Spoolbook.Entry/IMPORT.md`), in whatever language the heads are; anything else that is changed here stays here, since the papers are made from the YAML.
        """;

    /// <summary>The page, from the notes of workbooks that together have everything.</summary>
    /// <param name="german">The same workbooks in German, for the German names.</param>
    public static string Markdown(IReadOnlyList<WorkbookNotes> notes, WorkbookTerms german, IReadOnlyList<WorkbookNotes> inGerman)
    {
        var page = new StringBuilder(Before).Append('\n');
        Formats(page);
        Codes(page, notes[0], german);
        Summary(page, notes, inGerman);
        foreach (var sheet in notes[0].Sheets)
        {
            Sheet(page, sheet, german, [.. notes.Select(n => n.Sheets.Single(s => s.Table == sheet.Table))]);
        }

        return page.ToString();
    }

    static void Formats(StringBuilder page)
    {
        var formats = new CellFormats(inMetres: true);
        page.Append("\n## How cells are shown\n\n| word on this page | number format |\n|---|---|\n");
        foreach (var format in Enum.GetValues<CellFormat>())
        {
            var code =
                format == CellFormat.Length ? "feet: words; metres: `#,##0.00;-#,##0.00;\"–\"`" : $"`{formats.NumberFormat(format)}`";
            page.Append(CultureInfo.InvariantCulture, $"| {Word(format)} | {code} |\n");
        }
    }

    // A code with another name on one sheet has that sheet beside it.
    static void Codes(StringBuilder page, WorkbookNotes notes, WorkbookTerms german)
    {
        page.Append("\n## Codes\n\n| in cells and formulas | German | where |\n|---|---|---|\n");
        var codes =
            from sheet in notes.Sheets
            from column in sheet.Columns
            from code in column.Codes
            group $"{sheet.Name}: {column.Head}" by (code, Called: german.Code(sheet.Table, code)) into same
            orderby same.Key.code.ToLowerInvariant(), same.Key.Called
            select same;
        foreach (var same in codes)
        {
            page.Append(CultureInfo.InvariantCulture, $"| `{same.Key.code}` | {same.Key.Called} | {string.Join("; ", same)} |\n");
        }
    }

    static void Summary(StringBuilder page, IReadOnlyList<WorkbookNotes> notes, IReadOnlyList<WorkbookNotes> inGerman)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n## Figures\n\nIn German: {inGerman[0].SummaryCalled}. ");
        page.Append(
            """
            No table: labels in column A, figures in B, the frames of lengths in C, remarks in D. The formula of a length is that of its frames. Lines about a forecast stand there only where there is one, and waste only by the causes that there are.

            | label | German | figure | shown as | defined name |
            |---|---|---|---|---|

            """
        );
        var lines = new List<LineNote>();
        var called = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (note, german) in notes.Zip(inGerman))
        {
            // A line that only some workbooks have goes after the line it follows there.
            var at = -1;
            foreach (var (line, other) in note.Summary.Zip(german.Summary))
            {
                called[line.Label] = other.Label;
                var known = lines.FindIndex(l => l.Label == line.Label && l.Name == line.Name && l.Formula == line.Formula);
                at = known >= 0 ? known : at + 1;
                if (known < 0)
                {
                    lines.Insert(at, line);
                }
            }
        }

        foreach (var line in lines)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {line.Label} | {called[line.Label]} | {(line.Formula is { } formula ? Code("=" + formula) : "typed")} | "
                    + $"{Word(line.Format)} | {(line.Name is { } name ? Code(name) : "")} |\n"
            );
        }
    }

    static void Sheet(StringBuilder page, SheetNote sheet, WorkbookTerms german, IReadOnlyList<SheetNote> all)
    {
        page.Append(
            CultureInfo.InvariantCulture,
            $"\n## {sheet.Name}\n\nTable `{sheet.Table}`, in German {german.Sheet(sheet.Name)}, "
                + $"on the sheet {sheet.Page}. {sheet.About}\n\n"
        );
        page.Append("| column | head | German | what it has | written as | shown as |\n|---|---|---|---|---|---|\n");
        for (var c = 0; c < sheet.Columns.Count; c++)
        {
            var column = sheet.Columns[c];
            var same = all.Select(s => s.Columns[c]).ToList();
            var formulas = same.SelectMany(s => s.Formulas).Distinct(StringComparer.Ordinal).ToList();
            var typed = formulas.Count == 0 || all.Any(s => s.Columns[c].Typed && s.Columns[c].Formulas.Count > 0);
            List<string> written = [.. typed ? [Typed(column)] : (string[])[], .. formulas.Select(f => Code("=" + f))];
            var words = ColumnDescriptions.All.GetValueOrDefault((sheet.Table, column.Head), "");
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {Letters(c)} | `{column.Head}` | {german.Head(sheet.Table, column.Head)} | {words} | "
                    + $"{string.Join(" or ", written)}{Marks(column)} | {Word(column.Format)} |\n"
            );
        }
    }

    static string Typed(ColumnNote column) =>
        column.Allowed switch
        {
            null => "typed",
            { Least: { } least } => string.Create(CultureInfo.InvariantCulture, $"typed: a whole number from {least}"),
            { Strict: true } allowed => "typed: " + string.Join(", ", allowed.Words.Select(Code)),
            _ => "typed: a name of the production's, or another after a question",
        };

    static string Marks(ColumnNote column) =>
        (column.Summed ? "; summed" : "") + (column.Bars ? "; bars" : "") + (column.Aside ? "; not printed" : "");

    // A bar would end the cell of the table.
    static string Code(string text) => "`" + text.Replace("|", "\\|", StringComparison.Ordinal) + "`";

    static string Word(CellFormat format) =>
        format switch
        {
            CellFormat.LongWords => "long words",
            CellFormat.ToOne => "n : 1",
            _ => format.ToString().ToLowerInvariant(),
        };

    static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : "A" + (char)('A' + column - 26);
}
