namespace Spoolbook.Printing;

/// <summary>The published descriptions of what commands print for programs, in JSON Schema 2020-12.</summary>
internal static class OutputSchema
{
    /// <summary>What <c>check --format json</c> prints.</summary>
    public static string Findings => Text("findings.schema.json");

    /// <summary>What <c>status --format json</c> prints.</summary>
    public static string Status => Text("status.schema.json");

    static string Text(string resource)
    {
        using var stream = typeof(OutputSchema).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"{resource} is not in this build.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
