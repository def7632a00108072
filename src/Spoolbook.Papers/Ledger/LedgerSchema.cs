namespace Spoolbook.Papers.Ledger;

/// <summary>The published description of <c>ledger.json</c>, in JSON Schema 2020-12.</summary>
public static class LedgerSchema
{
    /// <summary>The schema's name, which the file gives.</summary>
    public const string Id = "urn:spoolbook:schema:ledger:1";

    const string Resource = "ledger.schema.json";

    /// <summary>The schema as text.</summary>
    public static string Text { get; } = Read();

    static string Read()
    {
        using var stream = typeof(LedgerSchema).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not in this build.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
