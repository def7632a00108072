using System.Xml.Linq;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>The workbook in the production's language: other words, the same figures.</summary>
public class LanguageTests
{
    // Signs, and set jargon that both languages share.
    static readonly HashSet<string> TheSame =
    [
        "Take",
        "Takes",
        "Film",
        "EI",
        "Push",
        "Filter",
        "Emulsion",
        "Name",
        "T",
        "16mm (FramesPerFoot)",
        "ft",
        "m",
    ];

    // Together they have every kind of line.
    static readonly LedgerSource[] Sources = [Shoots.Sample, Shoots.HalfWay, Shoots.Restocked, Shoots.Awkward, Shoots.WrongStock];
    static readonly Both[] Books =
    [
        .. Sources.Select(s => new Both(new XlsxReader(Workbooks.Of(s)), new XlsxReader(Workbooks.GermanOf(s)))),
    ];

    static readonly WorkbookNotes Notes = FootageWorkbook.Notes(Shoots.Sample, new WorkbookTerms(Workbooks.English));

    static IEnumerable<(SheetNote Sheet, ColumnNote Column)> Columns => Notes.Sheets.SelectMany(s => s.Columns.Select(c => (s, c)));

    [Fact]
    public void Every_figure_is_the_same_in_both_languages() => Assert.All(Books, book =>
        {
            foreach (var (english, german) in book.English.Sheets.Values.Zip(book.German.Sheets.Values))
            {
                Assert.Equal(english.Cells.Keys, german.Cells.Keys);
                var figures = english.Cells.Where(c => c.Value.Type == "n").Select(c => (c.Key, c.Value.Value));
                Assert.Equal(figures, german.Cells.Where(c => c.Value.Type == "n").Select(c => (c.Key, c.Value.Value)));
                Assert.Equal(
                    english.Cells.Where(c => c.Value.Formula is not null).Select(c => c.Key),
                    german.Cells.Where(c => c.Value.Formula is not null).Select(c => c.Key)
                );
            }
        });

    [Fact]
    public void Tables_and_names_are_the_same_in_every_language_for_a_users_own_formula() => Assert.All(Books, book =>
        {
            Assert.Equal(book.English.Tables.Keys, book.German.Tables.Keys);
            Assert.Equal(book.English.Names.Keys, book.German.Names.Keys);
            Assert.All(book.German.Names, name =>
                Assert.StartsWith(
                    name.Key.StartsWith("LeftOfStock", StringComparison.Ordinal) ? "Material!" : "Zahlen!",
                    name.Value.Replace("'", "", StringComparison.Ordinal),
                    StringComparison.Ordinal
                )
            );
        });

    [Fact]
    public void No_English_is_left_in_the_German_workbook() => Assert.All(Books, book =>
        {
            Assert.Empty(book.English.Sheets.Keys.Intersect(book.German.Sheets.Keys).Except(TheSame));
            foreach (var (english, german) in book.English.Sheets.Values.Zip(book.German.Sheets.Values))
            {
                Assert.Empty(Report(english).Intersect(Report(german)).Except(TheSame));
            }

            foreach (var note in Notes.Sheets)
            {
                var (english, german) = (book.English.Tables[note.Table], book.German.Tables[note.Table]);
                var last = RowOf(english.Rows().Last().Values.First());
                var ours = Left(english, german)
                    .Where(c =>
                        RowOf(c) >= english.HeadRow - 3
                        && RowOf(c) <= last
                        && (
                            (RowOf(c) <= english.HeadRow && english.Cells[c].Formula is null)
                            || (ColumnOf(c) < note.Columns.Count && note.Columns[ColumnOf(c)].Codes.Count > 0)
                        )
                    );
                Assert.Empty(ours.Select(c => english.Value(c)).Except(TheSame));
            }

            // Titles, notices and shots are the production's own words.
            var (first, erste) = (book.English.Sheets.Values.First(), book.German.Sheets.Values.First());
            Assert.Empty(
                Left(first, erste)
                    .Where(c => c is not ("A1" or "A4") && c[0] != 'E' && first.Cells[c].Formula is null)
                    .Select(c => first.Value(c))
                    .Except(TheSame)
            );
            Assert.Empty(
                Left(book.English.Sheets.Values.Last(), book.German.Sheets.Values.Last())
                    .Where(c => book.English.Sheets.Values.Last().Cells[c].Formula is null)
                    .Select(c => book.English.Sheets.Values.Last().Value(c))
                    .Except(TheSame)
            );
        });

    static List<string> Left(XlsxSheet english, XlsxSheet german) =>
        [
            .. english
                .Cells.Where(c => c.Value.Type != "n" && c.Value.Value.Length > 0 && german.Value(c.Key) == c.Value.Value)
                .Select(c => c.Key),
        ];

    [Fact]
    public void A_forecast_is_simulated_and_not_drawn_by_lot() =>
        Assert.All(Books.SelectMany(b => b.German.Sheets.Values).SelectMany(s => s.Cells.Values), cell =>
            Assert.DoesNotContain("gelost", cell.Value, StringComparison.OrdinalIgnoreCase)
        );

    [Fact]
    public void No_formula_uses_a_missing_head_or_code()
    {
        foreach (
            var (words, books) in new[]
            {
                (Workbooks.English, Books.Select(b => b.English)),
                (Workbooks.German, Books.Select(b => b.German)),
            }
        )
        {
            var say = new WorkbookTerms(words);
            var codes = Columns.ToDictionary(
                c => (c.Sheet.Table, say.Head(c.Sheet.Table, c.Column.Head)),
                c => c.Column.Codes.Select(code => say.Code(c.Sheet.Table, code)).ToHashSet()
            );
            var every = codes.Values.SelectMany(c => c).Concat(((string[])["lasts", "open"]).Select(c => say.Code(null, c))).ToHashSet();
            var formulas = books.SelectMany(b => b.Sheets.Values).SelectMany(Formulas).Distinct().ToList();
            Assert.True(formulas.Count > 100);
            foreach (var formula in formulas)
            {
                var pieces = FormulaText.Pieces(formula).Where(p => p is not PlainPiece { Text: "" }).ToList();
                Assert.All(pieces.OfType<ColumnPiece>(), c =>
                    Assert.Contains((c.Table, c.Head), codes.Keys.Select(k => ((string?)k.Table, k.Item2)))
                );
                for (var i = 0; i < pieces.Count; i++)
                {
                    if (pieces[i] is not QuotedText { Text: var said } || !said.Any(char.IsLetter))
                    {
                        continue;
                    }

                    var asked =
                        i > 1 && pieces[i - 1] is PlainPiece { Text: "=" or "<>" or "," } && pieces[i - 2] is ColumnPiece column
                            ? codes[(column.Table!, column.Head)]
                            : every;
                    Assert.True(asked.Contains(said), $"{formula} asks for '{said}'");
                }
            }
        }
    }

    [Fact]
    public void Every_word_of_the_workbook_is_used()
    {
        var asked = new WorkbookTerms(Workbooks.English);
        LedgerSource[] all =
        [
            .. Sources,
            Shoots.Of(Reading.Files.TextFiles.OneFile("spoolbook: 1\ntitle: Nothing yet\ncode: NIL\nunits: metres\n")),
        ];
        foreach (var source in all.Append(all[0] with { Books = Shoot.Books.Of(all[0].Books.Production, shotsToGoOn: 1000) }))
        {
            Finding wrong = new("group/what", Level.Error, Sentence.Plain("Wrong."), new Place("production.yaml", 1, 1, 1));
            FootageWorkbook.Notes(
                source with
                {
                    Findings = [.. source.Findings, wrong],
                    Waived = [new Waived(wrong, new Waiver(wrong.Place) { Check = new(wrong.Check, wrong.Place) })],
                },
                asked
            );
        }

        Assert.Empty(Workbooks.English.Keys.Where(k => k.StartsWith("book.", StringComparison.Ordinal)).Except(asked.Asked));
    }

    [Theory]
    [InlineData("book.sheet.short-ends = Was an Restrollen noch übrig ist", "1 to 31 letters")]
    [InlineData("book.sheet.short-ends = Ende/Anfang", "none of [ ]")]
    [InlineData("book.sheet.takes = rollen", "another sheet is called 'rollen' too")]
    [InlineData("book.head.to-frame = VON BILD", "the head of the column 'From frame' of the sheet 'Takes' too")]
    [InlineData("book.head.to-frame =", "a column has a head")]
    [InlineData("book.head.to-frame = Bis 'Bild'", "a head with an apostrophe")]
    [InlineData("book.code.practice = dreh", "is what 'shoot' is called too in the column 'For'")]
    [InlineData("mark-good = K, gut", "a list of choices")]
    public void A_users_own_word_that_would_break_the_workbook_is_flagged(string line, string reason)
    {
        var words = Translations.Parse(new HouseTemplates().Find("words.de.txt")!.Text, line);
        var unfit = Assert.Throws<UnfitWordException>(() => FootageWorkbook.Make(Shoots.Restocked, words));
        Assert.StartsWith(line.Split(' ')[0], unfit.Key, StringComparison.Ordinal);
        Assert.Contains(reason, unfit.Reason, StringComparison.Ordinal);
    }

    // What a spreadsheet shows to the person typing, and prints at the foot.
    static IEnumerable<string> Report(XlsxSheet sheet) =>
        [
            .. sheet
                .Xml.Descendants()
                .Where(e => e.Name.LocalName == "dataValidation")
                .SelectMany(v => new[] { v.Attribute("error")?.Value, v.Attribute("errorTitle")?.Value })
                .OfType<string>(),
            .. sheet
                .Xml.Descendants()
                .Where(e =>
                    e.Name.LocalName == "formula1" && e.Value.StartsWith('"') && e.Parent!.Attribute("errorStyle")?.Value != "warning"
                )
                .SelectMany(v => v.Value.Trim('"').Split(',')),
            .. sheet
                .Xml.Descendants()
                .Where(e => e.Name.LocalName == "cfRule")
                .Descendants()
                .Where(e => e.Name.LocalName == "formula")
                .SelectMany(f => FormulaText.Pieces(f.Value).OfType<QuotedText>())
                .Select(q => q.Text)
                .Where(text => text.Length > 0),
        ];

    static IEnumerable<string> Formulas(XlsxSheet sheet) =>
        [
            .. sheet.Cells.Values.Select(c => c.Formula).OfType<string>(),
            .. sheet.Tables.Descendants().Where(e => e.Name.LocalName == "calculatedColumnFormula").Select(e => e.Value),
            .. sheet.Xml.Descendants().Where(e => e.Name.LocalName == "formula").Select(f => f.Value),
        ];

    static int RowOf(string address) =>
        int.Parse(address.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"]), System.Globalization.CultureInfo.InvariantCulture);

    static int ColumnOf(string address) =>
        address.TrimEnd([.. "0123456789"]) is var letters && letters.Length == 1 ? letters[0] - 'A' : 26 + letters[1] - 'A';

    sealed class Both(XlsxReader english, XlsxReader german)
    {
        public XlsxReader English => english;

        public XlsxReader German => german;
    }
}
