using System.Text.Json;
using Spoolbook.Reading.Schemas;

namespace Spoolbook.Reading.Tests.Schemas;

public sealed class KeysPageTests
{
    [Fact]
    public void The_keys_page_lists_the_keys_that_the_reader_reads() =>
        ReferencePage.Holds(FormatTables.Markdown(), "Spoolbook.Reading", "KEYS.md", "reference-keys");

    [Fact]
    public void The_page_about_the_format_leaves_no_key_out()
    {
        var story = File.ReadAllText(Path.Combine(Repository.Root, "src", "Spoolbook.Reading", "FORMAT.md"));
        var keys = ProductionSchema.Kinds.SelectMany(k => KeysIn(JsonDocument.Parse(ProductionSchema.Json(k)).RootElement)).Distinct();

        Assert.DoesNotContain(keys, key => !story.Contains(key, StringComparison.Ordinal));
    }

    static IEnumerable<string> KeysIn(JsonElement schema) =>
        from table in schema.GetProperty("$defs").EnumerateObject().Select(d => d.Value).Prepend(schema)
        where table.TryGetProperty("properties", out _)
        from property in table.GetProperty("properties").EnumerateObject()
        select property.Name;
}
