using System.Text.Json;
using Json.Schema;
using Spoolbook.Reading.Tests.Schemas;

namespace Spoolbook.Acceptance;

/// <summary>The schemas that the command prints, checked by an outside library.</summary>
public sealed class PublishedSchemaTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    public static TheoryData<string> Kinds => ["production", "stock", "kit", "roll", "one-file", "school", "findings", "status", "ledger"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_command_prints_a_schema_of_2020_12(string kind)
    {
        var (status, printed, _) = _bench.Run("schema", kind);
        using var schema = JsonDocument.Parse(printed);

        Assert.Equal(0, status);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.RootElement.GetProperty("$schema").GetString());
        Assert.Equal($"urn:spoolbook:schema:{kind}:1", schema.RootElement.GetProperty("$id").GetString());
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
        Assert.Empty(SchemaBlocks.Twice(printed));
    }

    [Fact]
    public void The_findings_of_every_production_of_the_tests_fit_their_schema()
    {
        var schema = Schema("findings");
        string[] productions =
        [
            Repository.Sample,
            .. from folder in (string[])[TestFolders.Broken, TestFolders.Clean]
            from name in TestFolders.NamesIn(folder)
            select TestFolders.ProductionIn(Path.Combine(folder, name)),
        ];

        Assert.All(productions, production =>
        {
            using var findings = JsonDocument.Parse(_bench.Run("check", production, "--format", "json").Out);
            Assert.True(schema.Evaluate(findings.RootElement).IsValid, production);
        });
    }

    [Fact]
    public void The_findings_of_a_school_fit_the_same_schema()
    {
        var school = Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "department");
        using var findings = JsonDocument.Parse(_bench.Run("check", school, "--format", "json").Out);
        Assert.Equal(5, findings.RootElement.GetProperty("productions").GetArrayLength());
        Assert.True(Schema("findings").Evaluate(findings.RootElement).IsValid);
    }

    [Fact]
    public void The_status_of_every_clean_production_fits_its_schema()
    {
        var schema = Schema("status");
        Assert.All(
            TestFolders.NamesIn(TestFolders.Clean).Select(n => TestFolders.ProductionIn(Path.Combine(TestFolders.Clean, n))),
            production =>
            {
                using var status = JsonDocument.Parse(_bench.Run("status", production, "--format", "json").Out);
                Assert.True(schema.Evaluate(status.RootElement).IsValid, production);
            }
        );
    }

    [Fact]
    public void A_ledger_of_an_earlier_version_fits_the_schema_of_now()
    {
        var kept = Directory.GetFiles(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "ledgers"), "*.json");

        Assert.NotEmpty(kept);
        Assert.All(kept, file =>
        {
            using var ledger = JsonDocument.Parse(File.ReadAllText(file));
            Assert.True(Schema("ledger").Evaluate(ledger.RootElement).IsValid, file);
        });
    }

    [Fact]
    public void A_ledger_names_its_schema()
    {
        _bench.Run("make", Repository.Sample, "--out", "papers", "--only", "ledger");
        using var ledger = JsonDocument.Parse(File.ReadAllText(_bench.PathOf("papers/ledger.json")));
        using var schema = JsonDocument.Parse(_bench.Run("schema", "ledger").Out);

        Assert.Equal(schema.RootElement.GetProperty("$id").GetString(), ledger.RootElement.GetProperty("$schema").GetString());
        Assert.True(Schema("ledger").Evaluate(ledger.RootElement).IsValid);
    }

    [Theory]
    [InlineData("\"level\": \"warning\"", "\"level\": \"grave\"")]
    [InlineData("\"line\": ", "\"row\": ")]
    [InlineData("\"message\": ", "\"text\": ")]
    [InlineData("\"reason\": ", "\"because\": ")]
    [InlineData("\"warnings\": ", "\"warned\": ")]
    public void Findings_that_say_something_else_do_not_fit(string there, string instead)
    {
        var printed = _bench.Run("check", Repository.Sample, "--format", "json").Out;
        Assert.Contains(there, printed, StringComparison.Ordinal);
        using var changed = JsonDocument.Parse(printed.Replace(there, instead, StringComparison.Ordinal));

        Assert.False(Schema("findings").Evaluate(changed.RootElement).IsValid);
    }

    [Theory]
    [InlineData("levels: {speed/spring-overrun: note, cover: off}", true)]
    [InlineData("levels: {speed/spring-overrun: Off}", true)]
    [InlineData("levels: {speed/spring-overun: note}", false)]
    [InlineData("levels: {speed/spring-overrun: silent}", false)]
    [InlineData("levels: {sheet: off}", false)]
    [InlineData("tolerances: {spring-slack: 1+00, counter-slack: 3, negative-over: 1 2/3, dissolve-level: 1/6}", true)]
    [InlineData("tolerances: {spring-slak: 1+00}", false)]
    [InlineData("tolerances: {spring-slack: 12}", false)]
    [InlineData("tolerances: {counter-slack: some}", false)]
    [InlineData("tolerances: {negative-over: 31}", false)]
    [InlineData("levels: {}", true)]
    [InlineData("level: {}", false)]
    public void An_editor_marks_a_rule_exactly_where_the_checks_do(string rules, bool fine)
    {
        var production = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(production, "production.yaml");
        File.AppendAllText(file, $"\nrules: {{{rules}}}\n");

        Assert.Equal(fine, Schema("production").Evaluate(YamlJson.Of(File.ReadAllText(file))!.Value).IsValid);
        Assert.Equal(
            fine,
            !Checks(production)
                .Any(c => c.StartsWith("rules/", StringComparison.Ordinal) || c.StartsWith("sheet/", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void The_schemas_are_written_beside_a_production_that_asks_for_them()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var roll = Path.Combine(production, "rolls", "r01.yaml");
        var (pointed, bare) = (File.ReadAllText(roll), string.Join('\n', File.ReadAllLines(roll).Skip(1)) + "\n");
        File.WriteAllText(roll, bare);

        var (status, printed, _) = _bench.Run("schema", "--into", production);

        Assert.Equal(0, status);
        Assert.Equal(pointed, File.ReadAllText(roll));
        Assert.Contains("  rolls/r01.yaml (changed)\n", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("r02.yaml", printed, StringComparison.Ordinal);
        Assert.All((string[])["production", "stock", "kit", "roll"], kind =>
            Assert.Equal(
                _bench.Run("schema", kind).Out.TrimEnd(),
                File.ReadAllText(Path.Combine(production, "schemas", kind + ".schema.json")).TrimEnd()
            )
        );
        Assert.Equal(Checks(Repository.Sample), Checks(production));
    }

    [Fact]
    public void The_schemas_beside_the_sample_are_those_that_the_command_prints() =>
        Assert.All(Directory.GetFiles(Path.Combine(Repository.Sample, "schemas")), file =>
            Assert.True(
                _bench.Run("schema", Path.GetFileName(file).Split('.')[0]).Out.TrimEnd() == File.ReadAllText(file).TrimEnd(),
                $"{file} is older than the keys or the checks: run scripts/reference-checks."
            )
        );

    public static TheoryData<string> SampleFiles =>
        [
            .. Directory
                .EnumerateFiles(Repository.Sample, "*.yaml", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(Repository.Sample, f)),
        ];

    [Theory]
    [MemberData(nameof(SampleFiles))]
    public void A_file_of_the_sample_points_to_its_schema_and_fits_it(string name)
    {
        const string pointer = "# yaml-language-server: $schema=";
        var file = Path.Combine(Repository.Sample, name);
        var first = File.ReadLines(file).First();
        Assert.StartsWith(pointer, first, StringComparison.Ordinal);
        var schema = Judge(File.ReadAllText(Path.Combine(Path.GetDirectoryName(file)!, first[pointer.Length..])));

        Assert.True(schema.Evaluate(YamlJson.Of(File.ReadAllText(file))!.Value).IsValid);
    }

    [Fact]
    public void Schemas_for_a_missing_folder_are_wrong_use() => Assert.Equal(2, _bench.Run("schema", "--into", "nowhere").Status);

    JsonSchema Schema(string kind) => Judge(_bench.Run("schema", kind).Out);

    // In a registry of its own: the library's shared one takes a schema's name only once.
    static JsonSchema Judge(string text) => JsonSchema.FromText(text, new BuildOptions { SchemaRegistry = new SchemaRegistry() });

    List<string> Checks(string production)
    {
        using var json = JsonDocument.Parse(_bench.Run("check", production, "--format", "json").Out);
        return [.. json.RootElement.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("check").GetString()!)];
    }
}
