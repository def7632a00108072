namespace Spoolbook.Printing;

/// <summary>For programs: one document, in the form of <c>findings.schema.json</c>.</summary>
internal sealed class SeveralJson : ISeveralForm
{
    public string Head { get; } = $"{{\n  \"spoolbook\": {FindingJson.Version},\n  \"productions\": [\n";

    public string Between => ",\n";

    public string Part(string name, CheckedProduction found, ProductionDone done, CommandEnvironment around) =>
        JsonText.Object(json =>
        {
            json.WriteString("production", name);
            json.WriteBoolean("finished", !done.IsFaulty);
            if (done.Papers is { } papers)
            {
                json.WriteNumber("papers", papers);
            }

            FindingJson.Write(json, found);
        });

    public string Tail(SeveralSum sum, CommandEnvironment around)
    {
        var counts = JsonText.Object(json =>
        {
            json.WriteNumber("errors", sum.Errors);
            json.WriteNumber("warnings", sum.Warnings);
            json.WriteNumber("notes", sum.Notes);
        });
        return $"\n  ],\n  \"asked\": {sum.Asked},\n  \"counts\": {counts}\n}}\n";
    }
}
