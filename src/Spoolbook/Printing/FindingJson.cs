using System.Text.Json;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>Findings for programs, in the form of <c>findings.schema.json</c>.</summary>
internal static class FindingJson
{
    /// <summary>The version of the form.</summary>
    public const int Version = 1;

    public static string Write(CheckedProduction found) =>
        JsonText.Object(json =>
        {
            json.WriteNumber("spoolbook", Version);
            Write(json, found);
        });

    /// <summary>What is found in one production, inside the braces of an object.</summary>
    public static void Write(Utf8JsonWriter json, CheckedProduction found)
    {
        json.Objects("findings", found.Findings, (j, f) => Write(j, f, null));
        json.Objects("waived", found.Waived, (j, w) => Write(j, w.Finding, w.Waiver.Reason?.Value ?? ""));
        json.Objects("notLookedAt", found.NotLookedAt, (j, open) =>
        {
            j.WriteString("question", open.Question);
            j.WriteString("message", open.Message);
            j.WriteString("key", open.Key);
            j.Objects("places", open.Places, Write);
        });
        json.Object("counts", j =>
        {
            j.WriteNumber("errors", found.Findings.Count(f => f.Level == Level.Error));
            j.WriteNumber("warnings", found.Findings.Count(f => f.Level == Level.Warning));
            j.WriteNumber("notes", found.Findings.Count(f => f.Level == Level.Note));
        });
    }

    /// <summary>One finding, inside the braces of an object.</summary>
    public static void Write(Utf8JsonWriter json, Finding finding, string? reason)
    {
        json.WriteString("check", finding.Check);
        json.WriteString("level", finding.Level.ToString().ToLowerInvariant());
        json.WriteString("message", finding.Message);
        json.Object("place", j => Write(j, finding.Place));
        WriteIf(json, "roll", finding.Roll);
        WriteIf(json, "take", finding.Take);
        if (finding.Figures.Length > 0)
        {
            json.Objects("figures", finding.Figures, (j, figure) =>
            {
                j.WriteString("name", figure.Name);
                j.WriteString("value", figure.Value);
            });
        }

        if (finding.Others.Length > 0)
        {
            json.Objects("others", finding.Others, (j, other) =>
            {
                j.WriteString("message", other.Message);
                j.Object("place", at => Write(at, other.Place));
            });
        }

        WriteIf(json, "help", finding.Help.Length > 0 ? finding.Help : null);
        WriteIf(json, "reason", reason);
    }

    static void WriteIf(Utf8JsonWriter json, string name, string? value)
    {
        if (value is not null)
        {
            json.WriteString(name, value);
        }
    }

    static void Write(Utf8JsonWriter json, Place place)
    {
        json.WriteString("file", place.File);
        json.WriteNumber("line", place.Line);
        json.WriteNumber("column", place.Column);
        json.WriteNumber("length", place.Length);
    }
}
