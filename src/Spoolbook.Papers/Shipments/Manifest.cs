using System.Globalization;
using System.Text.Json;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Papers.Shipments;

/// <summary>What is in a consignment, for other programs: a table and an object, can by can in packing order.</summary>
internal static class Manifest
{
    static readonly string[] _heads =
    [
        "n",
        "box",
        "can",
        "production",
        "title",
        "roll",
        "process",
        "push",
        "gauge",
        "frames",
        "feet",
        "record-sha256",
    ];

    /// <summary>The table.</summary>
    public static string Csv(ShipmentPapers papers)
    {
        var text = new CsvText();
        text.Add(_heads);
        foreach (var can in papers.Shipment.Cans)
        {
            text.Add([
                Number(can.Number),
                Number(can.Box),
                can.Code.ToString(),
                can.Production.Code,
                can.Production.Title,
                can.Roll.Roll.Name.Value,
                can.Process ?? "",
                Push(can),
                can.Production.Books.Production.Gauge.Name,
                Number(can.Roll.Tally.InCan.Frames),
                can.Feet.ToText(1),
                papers.Digest(can),
            ]);
        }

        return text.ToString();
    }

    /// <summary>The object, with a digest of every other file of the consignment.</summary>
    public static byte[] Json(ShipmentPapers papers, IEnumerable<(string Name, string Digest)> files)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            var shipment = papers.Shipment;
            json.WriteStartObject();
            json.WriteNumber("spoolbook-manifest", 1);
            json.WriteString("consignment", shipment.Id);
            json.WriteString("lab", shipment.Lab);
            json.WriteString("sent", Day(shipment.SentOn));
            if (shipment.BackBy is { } back)
            {
                json.WriteString("back-by", Day(back));
            }

            json.WriteNumber("count", shipment.Cans.Length);
            json.WriteNumber("boxes", shipment.Boxes);
            json.WriteString("feet", shipment.Feet.ToText(1));
            json.WriteStartArray("cans");
            foreach (var can in shipment.Cans)
            {
                json.WriteStartObject();
                json.WriteNumber("n", can.Number);
                json.WriteNumber("box", can.Box);
                json.WriteString("can", can.Code.ToString());
                json.WriteString("production", can.Production.Code);
                json.WriteString("title", can.Production.Title);
                json.WriteString("roll", can.Roll.Roll.Name.Value);
                json.WriteString("process", can.Process);
                json.WriteNumber("push", can.Push);
                json.WriteString("gauge", can.Production.Books.Production.Gauge.Name);
                json.WriteNumber("frames", can.Roll.Tally.InCan.Frames);
                json.WriteString("feet", can.Feet.ToText(1));
                json.WriteString("record-sha256", papers.Digest(can));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartObject("files-sha256");
            foreach (var (name, digest) in files)
            {
                json.WriteString(name, digest);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return [.. bytes.ToArray(), (byte)'\n'];
    }

    static string Push(PackedCan can) => can.Push.ToString(CultureInfo.InvariantCulture);

    static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
