using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Schemas;
using Spoolbook.Shoot.Findings;
using Xunit.Abstractions;

namespace Spoolbook.Reading.Tests.Schemas;

/// <summary>The schemas on real files, by an outside validator: what the reader refuses, an editor marks.</summary>
public sealed class SchemaTests(ITestOutputHelper output)
{
    // What a schema cannot know: other files, the calendar, and keys that a parser has already dropped.
    static readonly ImmutableHashSet<string> _beyondSchemas =
    [
        SheetChecks.DuplicateKey,
        SheetChecks.DuplicateName,
        SheetChecks.UnknownReference,
        SheetChecks.MissingFile,
        SheetChecks.BadDate,
        SheetChecks.BadTime,
    ];

    // Such a file never gets as far as a schema.
    static readonly ImmutableHashSet<string> _notAsked = [SheetChecks.NotYaml, SheetChecks.TooDeep, SheetChecks.TooLarge];

    static readonly ImmutableDictionary<string, JsonSchema> _schemas = ProductionSchema.Kinds.ToImmutableDictionary(
        k => k,
        k => JsonSchema.FromText(ProductionSchema.Json(k))
    );

    public static TheoryData<string> Kinds => [.. ProductionSchema.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_schema_is_valid(string kind)
    {
        using var schema = JsonDocument.Parse(ProductionSchema.Json(kind));

        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.RootElement.GetProperty("$schema").GetString());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_schema_is_named_by_a_urn_and_not_a_web_address(string kind)
    {
        using var schema = JsonDocument.Parse(ProductionSchema.Json(kind));

        Assert.Equal($"urn:spoolbook:schema:{kind}:1", schema.RootElement.GetProperty("$id").GetString());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_schema_says_everything_once(string kind) => Assert.Empty(SchemaBlocks.Twice(ProductionSchema.Json(kind)));

    [Theory]
    [InlineData(
        "{\n  \"a\": [\n    1,\n    2,\n    3,\n    4\n  ],\n  \"b\": {\n    \"c\": [\n      1,\n      2,\n      3,\n      4\n    ]\n"
            + "  }\n}\n",
        1
    )]
    [InlineData("{\n  \"a\": [\n    1,\n    2,\n    3,\n    4\n  ],\n  \"b\": [\n    1,\n    2,\n    3,\n    5\n  ]\n}\n", 0)]
    [InlineData("{\n  \"a\": [\n    1,\n    2,\n    3\n  ],\n  \"b\": [\n    1,\n    2,\n    3\n  ]\n}\n", 0)]
    public void Only_a_repeated_block_of_more_than_five_lines_counts_as_twice(string text, int twice) =>
        Assert.Equal(twice, SchemaBlocks.Twice(text).Count());

    [Fact]
    public void An_unknown_kind_of_file_has_no_schema() => Assert.Throws<ArgumentException>(() => ProductionSchema.Json("paper"));

    [Fact]
    public void The_sample_fits_its_schemas() => Assert.Empty(Unfit(Repository.Sample));

    [Fact]
    public void The_clean_productions_fit_their_schemas() =>
        Assert.Empty(
            Directory.GetDirectories(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "productions")).SelectMany(Unfit)
        );

    [Fact]
    public void What_the_reader_refuses_in_the_broken_productions_the_schemas_refuse_too()
    {
        var disagreements = new List<string>();
        var (refused, fine) = (0, 0);
        foreach (var folder in Directory.GetDirectories(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "broken")))
        {
            foreach (var (name, text, isAlone, refusedByReader) in Read(folder))
            {
                // A general parser refuses a map only for a key that is there twice, which the reader flags itself.
                if (YamlJson.Of(text) is not { } json)
                {
                    continue;
                }

                var fits = _schemas[KindOf(name, isAlone)].Evaluate(json).IsValid;
                if (fits == refusedByReader)
                {
                    disagreements.Add(
                        $"{Path.GetFileName(folder)}/{name}: the schema says {(fits ? "fine" : "wrong")}, and the reader does not"
                    );
                }

                (refused, fine) = refusedByReader ? (refused + 1, fine) : (refused, fine + 1);
            }
        }

        output.WriteLine($"{refused} files refused by both, {fine} fine for both, {disagreements.Count} disagreements");
        Assert.Empty(disagreements);
        Assert.True(refused > 20 && fine > 50);
    }

    [Fact]
    public void A_roll_in_the_file_of_a_folder_is_refused_and_is_right_where_all_is_in_one_file()
    {
        var text = YamlJson.Of(File.ReadAllText(Path.Combine(Repository.Sample, "rolls", "r01.yaml")))!.Value;
        var roll = JsonObject.Create(text)!;
        roll.Remove("spoolbook");
        var production = JsonObject.Create(YamlJson.Of(File.ReadAllText(Path.Combine(Repository.Sample, "production.yaml")))!.Value)!;
        production["rolls"] = new JsonArray(roll);
        var whole = JsonSerializer.SerializeToElement(production);

        Assert.False(_schemas["production"].Evaluate(whole).IsValid);
        Assert.True(_schemas["one-file"].Evaluate(whole).IsValid);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void An_editor_offers_no_null_and_says_of_each_text_that_does_not_fit_what_to_write(string kind)
    {
        var all = Everything(JsonNode.Parse(ProductionSchema.Json(kind))!).OfType<JsonObject>().ToList();

        Assert.DoesNotContain(all, part => part["type"]?.ToJsonString().Contains("null", StringComparison.Ordinal) == true);
        var said = all.Where(part => part["pattern"] is not null && part["errorMessage"] is not null).ToList();
        Assert.All(said, part => Assert.StartsWith("This is not ", (string)part["errorMessage"]!, StringComparison.Ordinal));
        Assert.All(all.Where(part => part["pattern"] is not null && part["errorMessage"] is null), part =>
            Assert.Contains(part.Parent!.AsArray(), way => way!["enum"] is not null)
        );
    }

    static IEnumerable<JsonNode?> Everything(JsonNode node)
    {
        var inside =
            node is JsonObject map ? map.Select(m => m.Value)
            : node is JsonArray list ? list.AsEnumerable()
            : [];
        return inside.Where(n => n is not null).SelectMany(n => Everything(n!)).Prepend(node);
    }

    [Fact]
    public void Every_key_has_words_that_an_editor_can_show()
    {
        using var schema = JsonDocument.Parse(ProductionSchema.Json("roll"));
        var take = schema.RootElement.GetProperty("$defs").GetProperty("take").GetProperty("properties");

        Assert.Contains("mark", take.EnumerateObject().Select(p => p.Name));
        Assert.All(take.EnumerateObject(), p => Assert.NotEmpty(p.Value.GetProperty("description").GetString()!));
        Assert.Equal(
            ["good", "hold", "ng", "test"],
            MeantBy(take.GetProperty("mark")).GetProperty("anyOf")[0].GetProperty("enum").EnumerateArray().Select(e => e.GetString()!)
        );

        JsonElement MeantBy(JsonElement property) =>
            schema.RootElement.GetProperty("$defs").GetProperty(property.GetProperty("$ref").GetString()!["#/$defs/".Length..]);
    }

    [Fact]
    public void The_example_beside_every_key_fits_the_key() => Assert.All(ProductionSchema.Kinds, kind =>
        {
            var schema = JsonDocument.Parse(ProductionSchema.Json(kind)).RootElement;
            var examples = Examples(schema).ToList();
            Assert.NotEmpty(examples);
            Assert.All(examples, e => Assert.True(Alone(e.Property, schema).Evaluate(YamlJson.Of(e.Example)!.Value).IsValid, e.Example));
        });

    // A key's schema refers to definitions in the whole schema.
    static JsonSchema Alone(JsonElement property, JsonElement schema)
    {
        var alone = JsonObject.Create(property)!;
        // Without it the judge takes a dialect that allows no word of an editor's.
        alone["$schema"] = schema.GetProperty("$schema").GetString();
        alone["$defs"] = JsonObject.Create(schema.GetProperty("$defs"));
        return JsonSchema.FromText(alone.ToJsonString());
    }

    static IEnumerable<(JsonElement Property, string Example)> Examples(JsonElement schema)
    {
        var tables = schema.GetProperty("$defs").EnumerateObject().Select(d => d.Value).Prepend(schema);
        return from table in tables
               where table.TryGetProperty("properties", out _)
               from property in table.GetProperty("properties").EnumerateObject()
               where property.Value.TryGetProperty("examples", out _)
               select (property.Value, property.Value.GetProperty("examples")[0].ToString());
    }

    static IEnumerable<string> Unfit(string folder) =>
        from file in Read(folder)
        where !_schemas[KindOf(file.Name, file.IsAlone)].Evaluate(YamlJson.Of(file.Text)!.Value).IsValid
        select $"{folder}/{file.Name}";

    static IEnumerable<(string Name, string Text, bool IsAlone, bool Refused)> Read(string folder)
    {
        var files = new FolderFiles(
            Directory.GetFiles(folder, "*.yaml") is [var only] && !Directory.Exists(Path.Combine(folder, "rolls")) ? only : folder
        );
        var result = ProductionReader.Read(files);
        return from name in files.Names
               let text = files.Open(name)
               where text.Fault is null
               let findings = result.Findings.Where(f => f.Place.File == name).ToList()
               where !findings.Exists(f => _notAsked.Contains(f.Check))
               where findings.Count == 0 || !findings.TrueForAll(IsBeyondSchemas)
               select (name, text.Text!, files.IsOneFile, findings.Count > 0);
    }

    // The frames in a foot depend on the gauge, which is in another file.
    static bool IsBeyondSchemas(Finding finding) =>
        _beyondSchemas.Contains(finding.Check) || finding.Message.Contains("a foot or more in its frames", StringComparison.Ordinal);

    static string KindOf(string name, bool isAlone) =>
        name switch
        {
            _ when isAlone => "one-file",
            _ when name.StartsWith("rolls/", StringComparison.Ordinal) => "roll",
            "stock.yaml" => "stock",
            "kit.yaml" => "kit",
            _ => "production",
        };
}
