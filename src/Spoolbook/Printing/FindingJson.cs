using System.Text.Encodings.Web;
using System.Text.Json;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>Findings for programs.</summary>
internal static class FindingJson
{
    public static string Write(Judged judged)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteNumber("spoolbook", 1);
            json.WriteStartArray("findings");
            foreach (var finding in judged.Findings)
            {
                Write(json, finding, null);
            }

            json.WriteEndArray();
            json.WriteStartArray("waived");
            foreach (var waived in judged.Waived)
            {
                Write(json, waived.Finding, waived.Waiver.Reason?.Value ?? "");
            }

            json.WriteEndArray();
            json.WriteStartObject("counts");
            json.WriteNumber("errors", judged.Findings.Count(f => f.Level == Level.Error));
            json.WriteNumber("warnings", judged.Findings.Count(f => f.Level == Level.Warning));
            json.WriteNumber("notes", judged.Findings.Count(f => f.Level == Level.Note));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        return System.Text.Encoding.UTF8.GetString(buffer.ToArray());
    }

    static void Write(Utf8JsonWriter json, Finding finding, string? reason)
    {
        json.WriteStartObject();
        json.WriteString("check", finding.Check);
        json.WriteString("level", finding.Level.ToString().ToLowerInvariant());
        json.WriteString("message", finding.Message);
        Write(json, finding.Place);
        if (finding.Roll is { } roll)
        {
            json.WriteString("roll", roll);
        }

        if (finding.Take is { } take)
        {
            json.WriteString("take", take);
        }

        if (finding.Figures.Length > 0)
        {
            json.WriteStartArray("figures");
            foreach (var figure in finding.Figures)
            {
                json.WriteStartObject();
                json.WriteString("name", figure.Name);
                json.WriteString("value", figure.Value);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        if (finding.Others.Length > 0)
        {
            json.WriteStartArray("others");
            foreach (var other in finding.Others)
            {
                json.WriteStartObject();
                json.WriteString("message", other.Message);
                Write(json, other.Place);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        if (finding.Help.Length > 0)
        {
            json.WriteString("help", finding.Help);
        }

        if (reason is not null)
        {
            json.WriteString("reason", reason);
        }

        json.WriteEndObject();
    }

    static void Write(Utf8JsonWriter json, Place place)
    {
        json.WriteStartObject("place");
        json.WriteString("file", place.File);
        json.WriteNumber("line", place.Line);
        json.WriteNumber("column", place.Column);
        json.WriteNumber("length", place.Length);
        json.WriteEndObject();
    }
}
