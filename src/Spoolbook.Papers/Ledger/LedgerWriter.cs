using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Ledger;

/// <summary>
/// Writes <c>ledger.json</c>: every number on the papers, for other programs. The keys are always in the same order,
/// and none is ever left out; <c>ledger.schema.json</c> describes them.
/// </summary>
public static class LedgerWriter
{
    /// <summary>The version of the format; raised when a reader of the last one would go wrong.</summary>
    public const int Version = 1;

    // Programs and people search the strings for their own words, so no needless escapes.
    static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The ledger as text, with a final line end.</summary>
    public static string Write(LedgerSource source) => Encoding.UTF8.GetString(Bytes(source));

    /// <summary>The ledger as a file.</summary>
    public static byte[] Bytes(LedgerSource source)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            var ledger = new LedgerJson(json, source.Shoot.Production.Gauge);
            json.WriteStartObject();
            Head(ledger, source);
            ledger.Use("total", source.Stock.Use);
            new LedgerRolls(ledger, source).Write();
            new LedgerStock(ledger, source).Write();
            LedgerCost.Write(ledger, source.Cost, source.Books.ToEnd);
            LedgerForecast.Write(ledger, source.Forecast);
            Findings(ledger, source);
            json.WriteEndObject();
        }

        bytes.WriteByte((byte)'\n');
        return bytes.ToArray();
    }

    static void Head(LedgerJson ledger, LedgerSource source)
    {
        var production = source.Shoot.Production;
        ledger.Word("$schema", LedgerSchema.Id);
        ledger.Count("spoolbook", Version);
        ledger.Date("made", source.Made);
        ledger.Json.WriteBoolean("draft", source.IsDraft);
        ledger.Object("production", () =>
        {
            ledger.Word("title", production.Title.Value);
            ledger.Word("code", production.Code.Value);
            ledger.Word("invented", production.Invented?.Value);
            ledger.Word("director", production.Director is { } director ? production.NameOf(director.Value) : null);
            ledger.Word("cinematographer", production.Cinematographer is { } camera ? production.NameOf(camera.Value) : null);
            ledger.Word("gauge", production.Gauge.Name);
            ledger.Word("frames-per-foot", production.Gauge.FramesPerFoot.ToString());
            ledger.Word("projected-at", production.ProjectedAt.FramesPerSecond.ToString());
            ledger.Number("planned-seconds", production.RunningTime?.Value);
            ledger.Number("planned-ratio", production.PlannedRatio?.Value);
        });
    }

    static void Findings(LedgerJson ledger, LedgerSource source)
    {
        ledger.Objects("findings", source.Findings, f => Finding(ledger, f));
        ledger.Objects("waived", source.Waived, w =>
        {
            Finding(ledger, w.Finding);
            ledger.Word("reason", w.Waiver.Reason?.Value);
            ledger.Word("by", w.Waiver.By?.Value);
        });
    }

    static void Finding(LedgerJson ledger, Finding finding)
    {
        ledger.Word("check", finding.Check);
        ledger.Word("level", Codes.Of(finding.Level));
        ledger.Word("message", finding.Message);
        ledger.Word("help", finding.Help);
        ledger.Word("roll", finding.Roll);
        ledger.Word("take", finding.Take);
        ledger.Word("place", finding.Place.ToString());
    }
}
