using System.Text.Json;
using CsCheck;
using Spoolbook.Papers.KitLists;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Papers.WrapSummaries;
using Spoolbook.Reading.Files;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>LibreOffice recalculates every formula, and each cell agrees with the ledger to the frame and the cent.</summary>
public class RecalculationTests
{
    const int HowMany = 30;

    // Characters that need an apostrophe or brackets in a formula.
    static readonly Translations Signs = Translations.Parse(
        new HouseTemplates().Find("words.de.txt")!.Text,
        """
        book.head.frames = Bilder [B] #1
        book.head.from-frame = ab B., {x}: 50% @ &/^*+-=<>$
        book.head.roll = Rolle "R"
        book.sheet.film = Film & Licht, 100%
        book.code.short-end = Rest-Rolle (RL)
        """
    );

    // All the files are converted at once, because starting LibreOffice takes the time.
    static readonly Lazy<IReadOnlyList<Reckoned>> All = new(Recalculate);

    [ToolFact("soffice")]
    public void The_sample_agrees_with_its_ledger() => Compare(All.Value[0]);

    [ToolFact("soffice")]
    public void A_shoot_in_metres_agrees_with_its_ledger() => Compare(All.Value[4]);

    [ToolFact("soffice")]
    public void The_first_sheet_has_the_figures_of_the_producers_page()
    {
        foreach (var reckoned in new[] { All.Value[0], All.Value[4] })
        {
            var format = new PaperFormat(reckoned.Source.Books.Production, Workbooks.English);
            var producer = ProducerFacts.Of(reckoned.Source.Books, KitFacts.Of(reckoned.Source.Books.Kit, format), format);
            var forecast = ForecastFacts.Of(reckoned.Source.Forecast, format, reckoned.Source.Books.Coverage.Dropped.Select(s => s.Name));
            var first = reckoned.Anew.Sheets["Summary"];
            var cells = first.Cells.Values.Select(c => c.Type == "n" && c.Value.Length > 0 ? Rounded(c.Number) : c.Value).ToHashSet();
            Assert.All(producer.Money, glance => Assert.Contains(Bare(glance.Value, " EUR"), cells));
            Assert.All(producer.Left, glance => Assert.Contains(Bare(glance.Value, " m"), cells));
            Assert.All(forecast.Answers, glance => Assert.Contains(glance.Value, cells));
            Assert.Contains(Bare(producer.Got.Value, " of " + producer.Got.Value.Split(' ')[^1]) + ".00", cells);
        }
    }

    static string Rounded(double number) => number.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);

    static string Bare(string value, string unit) => value.Replace(unit, "", StringComparison.Ordinal);

    [ToolFact("soffice")]
    public void An_awkward_shoot_agrees_with_its_ledger() => Compare(All.Value[1]);

    [ToolFact("soffice")]
    public void A_German_workbook_has_the_English_ones_result_in_every_cell()
    {
        var (english, german) = (All.Value[0], All.Value[2]);
        Office.SameAsPreviewed(german.Ours, german.Anew);
        foreach (var (one, other) in english.Anew.Sheets.Values.Zip(german.Anew.Sheets.Values))
        {
            Assert.Equal(
                one.Cells.Where(c => c.Value.Type == "n").Select(c => (c.Key, c.Value.Value)),
                other.Cells.Where(c => c.Value.Type == "n").Select(c => (c.Key, c.Value.Value))
            );
        }
    }

    [ToolFact("soffice")]
    public void Heads_full_of_signs_are_found_by_the_formulas() => Office.SameAsPreviewed(All.Value[3].Ours, All.Value[3].Anew);

    [ToolFact("soffice")]
    public void Shoots_drawn_by_lot_agree_with_their_ledgers()
    {
        Assert.Equal(HowMany, All.Value.Skip(5).Count());
        Assert.All(All.Value.Skip(5), Compare);
    }

    static List<Reckoned> Recalculate()
    {
        // A fixed seed.
        var drawn = new List<LedgerSource>();
        GeneratedShoots
            .Yaml.Array[HowMany]
            .Sample(
                yamls =>
                {
                    drawn = [.. yamls.Select(y => Shoots.Of(TextFiles.OneFile(y)))];
                },
                seed: "0000000000A0",
                iter: 1,
                threads: 1
            );
        List<LedgerSource> sources = [Shoots.Sample, Shoots.Awkward, Shoots.Sample, Shoots.HalfWay, Shoots.InMetres, .. drawn];
        List<byte[]> files =
        [
            Workbooks.Of(sources[0]),
            Workbooks.Of(sources[1]),
            Workbooks.GermanOf(sources[2]),
            FootageWorkbook.Make(sources[3], Signs),
            Workbooks.Of(sources[4]),
            .. drawn.Select(Workbooks.Of),
        ];
        return [.. sources.Zip(files, Office.Recalculate(files)).Select(s => new Reckoned(s.First, new XlsxReader(s.Second), s.Third))];
    }

    static void Compare(Reckoned reckoned)
    {
        Office.SameAsPreviewed(reckoned.Ours, reckoned.Anew);
        using var ledger = JsonDocument.Parse(LedgerWriter.Write(reckoned.Source));
        new LedgerComparison(reckoned.Anew, ledger.RootElement, reckoned.Source).Run();
    }

    sealed record Reckoned(LedgerSource Source, XlsxReader Ours, XlsxReader Anew);
}
