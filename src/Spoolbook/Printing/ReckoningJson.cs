using System.Text.Encodings.Web;
using System.Text.Json;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Printing;

/// <summary>A sum for programs: the lines that people get, each with its number where it is one.</summary>
internal static class ReckoningJson
{
    public static string Write(Reckoning reckoning)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteNumber("spoolbook", 1);
            json.WriteString("title", reckoning.Title);
            Write(json, "answers", reckoning.Answers);
            Write(json, "steps", reckoning.Steps);
            json.WriteEndObject();
        }

        return System.Text.Encoding.UTF8.GetString(buffer.ToArray());
    }

    static void Write(Utf8JsonWriter json, string name, IEnumerable<ReckoningLine> lines)
    {
        json.WriteStartArray(name);
        foreach (var line in lines)
        {
            json.WriteStartObject();
            json.WriteString("label", line.Label);
            json.WriteString("value", line.Value);
            json.WriteString("unit", line.Unit);
            if (line.Number is { } number)
            {
                json.WriteNumber("number", number);
            }
            else
            {
                json.WriteNull("number");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
