using System.Text.Json;
using Spoolbook.Entry;
using Spoolbook.Importing;

namespace Spoolbook.Printing;

/// <summary>The result of importing a table, for programs.</summary>
internal static class ImportJson
{
    public static string Write(ImportReport report) =>
        JsonText.Object(json =>
        {
            var plan = report.Plan;
            json.WriteNumber("spoolbook", 1);
            json.WriteBoolean("well", report.IsWell);
            json.WriteBoolean("dry-run", report.DryRun);
            json.WriteBoolean("written", report.Written);
            json.Object("takes", j =>
            {
                j.WriteNumber("new", plan.New);
                j.WriteNumber("changed", plan.Changed);
                j.WriteNumber("same", plan.Same);
            });
            json.Objects("refused", report.Refused, Write);
            json.Objects("notes", plan.Notes, Write);
            json.Objects("findings", report.Worse, (j, finding) =>
            {
                FindingJson.Write(j, finding, null);
                if (plan.RowOf(finding.Roll, finding.Take) is { } row)
                {
                    j.WriteString("row", row);
                }
            });
            json.Objects("files", report.IsWell ? plan.Files : [], (j, file) =>
            {
                j.WriteString("file", file.Name);
                j.WriteString("difference", string.Concat(UnifiedDiff.Write(file).Select(line => line + "\n")));
            });
        });

    static void Write(Utf8JsonWriter json, Objection objection)
    {
        json.WriteString("where", objection.Where);
        json.WriteString("message", objection.Message);
        if (objection.Help.Length > 0)
        {
            json.WriteString("help", objection.Help);
        }
    }
}
