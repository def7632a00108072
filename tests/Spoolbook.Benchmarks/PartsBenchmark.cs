using BenchmarkDotNet.Attributes;
using Spoolbook.Checks;
using Spoolbook.Checks.Running;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Pdf.Documents;
using Spoolbook.Pdf.Structure;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Benchmarks;

/// <summary>
/// What a making spends its time on, each part by itself: reading, the walk, the checks, a page of the vocabulary, its layout with the
/// PDF, the PDF alone, the workbook. On the sample, and on forty rolls.
/// </summary>
[MemoryDiagnoser]
public class PartsBenchmark : ITemplateSource
{
    // A row a take, as on a camera report.
    const string Report =
        "<article><h1>{{ title }}</h1><table>"
        + "<thead><tr><th scope=\"col\">Take</th><th scope=\"col\">To</th><th scope=\"col\">Note</th></tr></thead>"
        + "<tbody>{{ for row in rows }}<tr><td>{{ row.take }}</td><td class=\"num\">{{ row.to }}</td><td>{{ row.note }}</td></tr>{{ end }}"
        + "</tbody></table></article>";

    static readonly DateTimeOffset Made = new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero);

    FolderFiles _files = null!;
    Production _production = null!;
    Books _books = null!;
    LedgerSource _source = null!;
    Translations _words = null!;
    object _facts = null!;
    PageDocument _page = null!;

    [Params("sample-production", "tests/Spoolbook.Acceptance/productions/forty-rolls")]
    public string Shoot { get; set; } = "";

    [GlobalSetup]
    public void Prepare()
    {
        _files = new FolderFiles(Path.Combine(Root(), Shoot));
        _production = Read().Production!;
        _books = Tolerances.BooksOf(_production);
        _source = new LedgerSource(_books, [], [], new DateOnly(2026, 11, 29));
        _words = PaperLanguage.For(_production, new HouseTemplates()).Words;
        _facts = new Page(
            _production.Title.Value,
            [.. _production.Rolls.SelectMany(r => r.Takes).Select(t => new Row(t.Slate, t.To.Value.Frames, t.Note?.Value ?? "–"))]
        );
        _page = Page_of_a_template().Document ?? throw new InvalidOperationException("The benchmark's own template has a fault.");
    }

    [Benchmark]
    public ReadResult Read() => ProductionReader.Read(_files);

    [Benchmark]
    public int Walk() => _production.Rolls.Sum(roll => RollWalk.Of(roll).Moments.Length);

    [Benchmark]
    public int Check() => CheckRunner.OnRecords(_production, []).Length + CheckRunner.OnBook(Tolerances.BooksOf(_production), []).Length;

    [Benchmark]
    public PageResult Page_of_a_template() => TemplateEngine.Render(this, "report.html", _facts);

    [Benchmark]
    public PdfResult Layout_and_PDF() => PdfRenderer.Render(_page, new PageSetup(Paper.A4), new PdfMeta("Takes", "Nobody", "en", Made));

    [Benchmark]
    public byte[] PDF()
    {
        var document = new PdfDocument(new DocumentIdentity("Takes", "Nobody", "en", Made, "Benchmark", Accessible: true));
        var font = BuiltInFonts.Get(Face.Regular);
        foreach (var roll in _production.Rolls)
        {
            var page = document.AddPage(595, 842);
            var y = 40;
            foreach (var take in roll.Takes)
            {
                page.Begin(new StructureElement("P", document.Root));
                page.Text(40, y, $"{take.Slate} {take.Note?.Value}", font, 9, 0, tabular: true);
                page.End();
                y += 12;
            }
        }

        return document.Save();
    }

    [Benchmark]
    public byte[] Workbook() => FootageWorkbook.Make(_source, _words);

    TemplateText? ITemplateSource.Find(string name) => name == "report.html" ? new TemplateText(name, Report) : null;

    // BenchmarkDotNet runs in a folder of its own.
    static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Reports.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The benchmarks run outside the repository.");
        }

        return folder;
    }

    sealed record Page(string Title, IReadOnlyList<Row> Rows);

    sealed record Row(string Take, long To, string Note);
}
