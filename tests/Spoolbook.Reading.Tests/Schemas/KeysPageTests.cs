using System.Text.Json;
using Spoolbook.Reading.Schemas;
using Spoolbook.Reading.Tests.Samples;

namespace Spoolbook.Reading.Tests.Schemas;

public sealed class KeysPageTests
{
    [Fact]
    public void The_page_of_the_keys_is_what_the_reader_looks_at()
    {
        var page = FormatTables.Markdown();
        var received = Path.Combine(AppContext.BaseDirectory, "received", "KEYS.md");
        Directory.CreateDirectory(Path.GetDirectoryName(received)!);
        File.WriteAllText(received, page);

        Assert.True(page == File.ReadAllText(Path.Combine(Repository.Root, "src", "Spoolbook.Reading", "KEYS.md")), "KEYS.md is older than the keys: run scripts/reference-keys.");
    }

    [Fact]
    public void The_story_of_the_format_leaves_no_key_out()
    {
        var story = File.ReadAllText(Path.Combine(Repository.Root, "src", "Spoolbook.Reading", "FORMAT.md"));
        var keys = ProductionSchema.Kinds.SelectMany(k => KeysIn(JsonDocument.Parse(ProductionSchema.Json(k)).RootElement)).Distinct();

        Assert.DoesNotContain(keys, key => !story.Contains(key, StringComparison.Ordinal));
    }

    static IEnumerable<string> KeysIn(JsonElement schema) =>
        from table in schema.GetProperty("$defs").EnumerateObject().Select(d => d.Value).Prepend(schema)
        from property in table.GetProperty("properties").EnumerateObject()
        select property.Name;
}
