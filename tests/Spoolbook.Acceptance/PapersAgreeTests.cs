using System.Text.Json;
using System.Text.RegularExpressions;
using Spoolbook.Papers.Tests.Workbook;

namespace Spoolbook.Acceptance;

/// <summary>
/// A number is the same everywhere: each roll's takes and totals are read back from the PDF by an outside reader
/// (PdfPig), from the web page, from the workbook recalculated by LibreOffice, and from the ledger.
/// </summary>
public sealed partial class PapersAgreeTests : IDisposable
{
    static readonly (string Ledger, string Column)[] Accounts =
    [
        ("good", "Good"),
        ("hold", "Hold"),
        ("no-good", "No good"),
        ("waste", "Waste"),
        ("left-over", "Left over"),
        ("loaded", "Loaded"),
    ];

    readonly Bench _bench = new();
    readonly JsonElement _ledger;

    public PapersAgreeTests()
    {
        Assert.Equal(0, _bench.Run("make", Repository.Sample, "--out", "papers").Status);
        _ledger = JsonDocument.Parse(File.ReadAllBytes(_bench.PathOf("papers/ledger.json"))).RootElement;
    }

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Every_take_and_total_of_the_ledger_is_on_the_printed_report()
    {
        foreach (var roll in Rolls())
        {
            HoldsAll(roll, string.Join(' ', Pages.TextOf(_bench.PathOf($"papers/camera-report-{Name(roll)}.pdf"))));
        }
    }

    [Fact]
    public void Every_take_and_total_of_the_ledger_is_on_the_web_page()
    {
        foreach (var roll in Rolls())
        {
            var html = File.ReadAllText(_bench.PathOf($"papers/camera-report-{Name(roll)}.html"));
            HoldsAll(roll, Space().Replace(Tag().Replace(html[html.IndexOf("<body>", StringComparison.Ordinal)..], " "), " "));
        }
    }

    [ToolFact("soffice")]
    public void The_recalculated_workbook_agrees_to_the_frame()
    {
        var workbook = Office.Recalculate([File.ReadAllBytes(_bench.PathOf("papers/footage.xlsx"))])[0];
        var rolls = workbook.Tables["Rolls"];
        var rows = rolls.Rows().ToDictionary(r => rolls.Value(r["Roll"]));
        foreach (var roll in Rolls())
        {
            foreach (var (account, column) in Accounts)
            {
                Assert.Equal(Frames(roll, account), rolls.Cells[rows[Name(roll)][column + " frames"]].Number);
                Assert.Equal(Said(roll, account), rolls.Value(rows[Name(roll)][column]));
            }
        }

        var takes = workbook.Tables["Takes"];
        var written = takes
            .Rows()
            .Select(r =>
                (
                    takes.Value(r["Roll"]),
                    takes.Cells[r["From frame"]].Number,
                    takes.Cells[r["To frame"]].Number,
                    takes.Cells[r["Frames"]].Number
                )
            );
        Assert.Equal(
            from roll in Rolls()
            from take in Takes(roll)
            select (Name(roll), (double)Frames(take, "from"), (double)Frames(take, "to"), (double)Frames(take, "length")),
            written
        );
    }

    [Fact]
    public void Good_hold_no_good_waste_and_what_is_left_make_up_what_was_loaded()
    {
        foreach (var roll in Rolls())
        {
            Assert.Equal(Frames(roll, "loaded"), Accounts.Where(a => a.Ledger != "loaded").Sum(a => Frames(roll, a.Ledger)));
        }
    }

    static void HoldsAll(JsonElement roll, string text)
    {
        foreach (var take in Takes(roll))
        {
            Assert.Contains(
                $"{Word(take, "slate")} {Word(take, "mark")} {Feet(take, "from")} {Feet(take, "to")} {Feet(take, "length")}",
                text,
                StringComparison.Ordinal
            );
        }

        var totals = Accounts.Select(a => Said(roll, a.Ledger));
        Assert.Contains(string.Join(' ', totals), text, StringComparison.Ordinal);
    }

    static string? Said(JsonElement roll, string account) =>
        Frames(roll, account) == 0 ? "–" : Film(roll).GetProperty(account).GetProperty("feet").GetString();

    JsonElement.ArrayEnumerator Rolls() => _ledger.GetProperty("rolls").EnumerateArray();

    static JsonElement.ArrayEnumerator Takes(JsonElement roll) => roll.GetProperty("takes").EnumerateArray();

    static string Name(JsonElement roll) => roll.GetProperty("roll").GetString()!;

    static JsonElement Film(JsonElement roll) => roll.TryGetProperty("use", out var use) ? use.GetProperty("film") : roll;

    static long Frames(JsonElement of, string what) => Film(of).GetProperty(what).GetProperty("frames").GetInt64();

    static string Word(JsonElement take, string what) => take.GetProperty(what).GetString()!;

    static string Feet(JsonElement take, string what) => take.GetProperty(what).GetProperty("feet").GetString()!;

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
