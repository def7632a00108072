using System.Text.Json;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Printing;

/// <summary>A sum for programs: the same lines that people get, each with its number where it has one.</summary>
internal static class ReckoningJson
{
    public static string Write(Reckoning reckoning) =>
        JsonText.Object(json =>
        {
            json.WriteNumber("spoolbook", 1);
            json.WriteString("title", reckoning.Title);
            json.Objects("answers", reckoning.Answers, Write);
            json.Objects("steps", reckoning.Steps, Write);
        });

    static void Write(Utf8JsonWriter json, ReckoningLine line)
    {
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
    }
}
