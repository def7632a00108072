using System.Text.Json;

namespace Spoolbook.Tests;

/// <summary>Findings as SARIF 2.1.0: valid by the standard's schema and rules, and with the right characters marked in an editor.</summary>
public sealed class SarifTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [ToolFact("sarif-multitool")]
    public void The_standards_schema_and_its_rules_are_kept_for_every_production_of_the_tests()
    {
        var logs = Productions().Select(p => (p.Name, _bench.Run("check", p.Path, "--format", "sarif").Out)).ToList();
        foreach (var (name, log) in logs)
        {
            File.WriteAllText(_bench.PathOf(name + ".sarif"), log);
        }

        var (_, said) = Tools.Run("sarif-multitool", "validate", _bench.PathOf("*.sarif"));

        Assert.Contains($"{logs.Count} files scanned", said, StringComparison.Ordinal);
        Assert.DoesNotContain(": error ", said, StringComparison.Ordinal);

        // It would still like an address of the program (SARIF2005), and characters to mark in a file that is missing
        // or not text (SARIF2017).
        Assert.All(said.Split('\n').Where(l => l.Contains(": warning ", StringComparison.Ordinal)), l =>
            Assert.Matches("SARIF2005|SARIF2017", l)
        );
    }

    [ToolFact("sarif-multitool")]
    public void The_judge_of_sarif_finds_what_is_wrong_in_a_log()
    {
        File.WriteAllText(
            _bench.PathOf("wrong.sarif"),
            Log(Repository.Sample).GetRawText().Replace("\"ruleId\"", "\"rule-id\"", StringComparison.Ordinal)
        );

        Assert.Contains(
            ": error ",
            Tools.Run("sarif-multitool", "validate", _bench.PathOf("wrong.sarif")).Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Each_result_points_at_the_characters_that_the_text_shows()
    {
        foreach (var (_, path) in Productions())
        {
            using var json = JsonDocument.Parse(_bench.Run("check", path, "--format", "json").Out);
            var findings = Array(json.RootElement, "findings").Concat(Array(json.RootElement, "waived")).ToList();
            // What no check could judge is open and no finding.
            var results = Array(Log(path), "results").Where(r => !r.TryGetProperty("kind", out _)).ToList();

            Assert.Equal(
                findings.Select(f => f.GetProperty("check").GetString()),
                results.Select(r => r.GetProperty("ruleId").GetString())
            );
            Assert.All(results.Zip(findings), pair => AssertMarks(pair.First, pair.Second));
        }
    }

    [Fact]
    public void Columns_count_utf_16_characters_and_paths_start_where_the_command_ran()
    {
        _bench.CopyOf(Repository.Sample, "a shoot");
        var log = Log("a shoot");

        Assert.Equal("utf16CodeUnits", log.GetProperty("columnKind").GetString());
        Assert.Equal(
            new Uri(_bench.Folder + "/").AbsoluteUri,
            log.GetProperty("originalUriBaseIds").GetProperty("%SRCROOT%").GetProperty("uri").GetString()
        );
        Assert.Contains("a%20shoot/rolls/r02.yaml", Array(log, "results").Select(Uri));
    }

    [Fact]
    public void A_production_outside_of_where_the_command_ran_is_its_own_base()
    {
        var log = Log(Repository.Sample);

        Assert.Equal(
            new Uri(Repository.Sample + "/").AbsoluteUri,
            log.GetProperty("originalUriBaseIds").GetProperty("%SRCROOT%").GetProperty("uri").GetString()
        );
        Assert.Contains("rolls/r02.yaml", Array(log, "results").Select(Uri));
    }

    [Fact]
    public void What_was_waived_is_suppressed_with_its_reason_and_nothing_else_is()
    {
        using var json = JsonDocument.Parse(_bench.Run("check", Repository.Sample, "--format", "json").Out);
        var reasons = Array(json.RootElement, "waived").Select(w => w.GetProperty("reason").GetString());

        var suppressed = Array(Log(Repository.Sample), "results").SelectMany(r => Array(r, "suppressions")).ToList();

        Assert.NotEmpty(suppressed);
        Assert.Equal(reasons, suppressed.Select(s => s.GetProperty("justification").GetString()));
        Assert.All(suppressed, s => Assert.Equal("inSource", s.GetProperty("kind").GetString()));
    }

    [Fact]
    public void A_second_place_is_a_related_location_and_every_rule_brings_its_page()
    {
        var log = Log(Repository.Sample);
        var rules = log.GetProperty("tool").GetProperty("driver").GetProperty("rules").EnumerateArray().ToList();

        Assert.Contains(Array(log, "results"), r =>
            Array(r, "relatedLocations").Any(l => l.GetProperty("message").GetProperty("text").GetString() == "last wound here")
        );
        Assert.All(Array(log, "results"), r =>
            Assert.Equal(r.GetProperty("ruleId").GetString(), rules[r.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString())
        );
        Assert.All(rules.Where(r => r.GetProperty("id").GetString() != "not-looked-at"), r =>
            Assert.Contains("Why it matters", r.GetProperty("help").GetProperty("markdown").GetString(), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_fingerprint_stays_when_lines_are_put_in_above()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var before = Fingerprints(production);
        foreach (var file in Directory.EnumerateFiles(production, "*.yaml", SearchOption.AllDirectories))
        {
            File.WriteAllText(file, "# a remark\n\n" + File.ReadAllText(file));
        }

        Assert.Equal(before, Fingerprints(production));
        Assert.Equal(before.Distinct(), before);
    }

    List<string> Fingerprints(string production) =>
        [.. Array(Log(production), "results").Select(r => r.GetProperty("partialFingerprints").GetProperty("spoolbook/v1").GetString()!)];

    JsonElement Log(string production)
    {
        using var json = JsonDocument.Parse(_bench.Run("check", production, "--format", "sarif").Out);
        Assert.Equal("2.1.0", json.RootElement.GetProperty("version").GetString());
        return json.RootElement.GetProperty("runs")[0].Clone();
    }

    static void AssertMarks(JsonElement result, JsonElement finding)
    {
        var place = finding.GetProperty("place");
        var physical = result.GetProperty("locations")[0].GetProperty("physicalLocation");
        Assert.EndsWith(
            string.Join('/', place.GetProperty("file").GetString()!.Split('/').Select(System.Uri.EscapeDataString)),
            Uri(result),
            StringComparison.Ordinal
        );
        if (physical.TryGetProperty("region", out var region))
        {
            Assert.Equal(place.GetProperty("line").GetInt32(), region.GetProperty("startLine").GetInt32());
            Assert.Equal(place.GetProperty("column").GetInt32(), region.GetProperty("startColumn").GetInt32());
            Assert.Equal(
                region.GetProperty("endColumn").GetInt32() - region.GetProperty("startColumn").GetInt32(),
                region.GetProperty("snippet").GetProperty("text").GetString()!.Length
            );
        }
    }

    static string Uri(JsonElement result) =>
        result.GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("artifactLocation").GetProperty("uri").GetString()!;

    static List<JsonElement> Array(JsonElement owner, string name) =>
        owner.TryGetProperty(name, out var array) ? [.. array.EnumerateArray()] : [];

    static IEnumerable<(string Name, string Path)> Productions() =>
        [
            ("sample", Repository.Sample),
            .. from folder in (string[])[TestFolders.Broken, TestFolders.Clean]
            from name in TestFolders.NamesIn(folder)
            select (name, TestFolders.ProductionIn(Path.Combine(folder, name))),
        ];
}
