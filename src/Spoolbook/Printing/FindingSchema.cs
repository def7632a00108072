namespace Spoolbook.Printing;

/// <summary>The published description of what <c>--format json</c> prints, in JSON Schema 2020-12.</summary>
internal static class FindingSchema
{
    const string Resource = "findings.schema.json";

    public static string Text()
    {
        using var stream = typeof(FindingSchema).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not in this build.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
