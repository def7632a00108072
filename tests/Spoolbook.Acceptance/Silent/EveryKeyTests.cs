using System.Text.Json;
using System.Text.RegularExpressions;
using Spoolbook.Reading.Files;

namespace Spoolbook.Acceptance.Silent;

/// <summary>
/// Each key of the record is in a clean production, so that its value is changed there, and the table of who notices says which
/// checks read it, or why none does. A key that is in no production would be a place for silent mistakes.
/// </summary>
public sealed partial class EveryKeyTests
{
    // Names, not keys: what a department sets for a check or a tolerance has a test for each name.
    static readonly string[] _names = ["levels", "tolerances"];

    [Fact]
    public void Each_key_is_in_a_clean_production()
    {
        var used = Folders().SelectMany(KeysIn).ToHashSet(StringComparer.Ordinal);
        var missing = Keys().Where(k => !used.Contains(k)).Order(StringComparer.Ordinal).ToList();
        Assert.True(missing.Count == 0, "In no clean production: " + string.Join(", ", missing));
    }

    [Fact]
    public void The_table_says_of_each_key_who_notices_or_why_nobody_does()
    {
        var rows = File.ReadLines(Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/Silent/SILENT.md"))
            .Select(l => Row().Match(l))
            .Where(m => m.Success)
            .ToDictionary(m => m.Groups["key"].Value, m => m.Groups["words"].Value.Trim(), StringComparer.Ordinal);
        var silent = Keys().Where(k => rows.GetValueOrDefault(k, "").Length == 0).Order(StringComparer.Ordinal).ToList();
        Assert.True(
            silent.Count == 0,
            "Nobody notices, and no reason is given (run scripts/silent-values; reasons.txt): " + string.Join(", ", silent)
        );
    }

    [Fact]
    public void The_table_names_only_checks_that_there_are()
    {
        var table = File.ReadAllText(Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/Silent/SILENT.md"));
        var known = Checks.Catalogue.All.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(Name().Matches(table).Select(m => m.Groups["name"].Value), n => !known.Contains(n));
    }

    static IEnumerable<string> Folders() =>
        TestFolders.NamesIn(TestFolders.Clean).Select(n => Path.Combine(TestFolders.Clean, n)).Prepend(Repository.Sample);

    static IEnumerable<string> KeysIn(string folder)
    {
        var files = new FolderFiles(TestFolders.ProductionIn(folder));
        return files.Names.SelectMany(n => WrittenValues.Of(n, files.Open(n).Text ?? "")).Select(v => v.Key);
    }

    // Keys with a value of their own, named by the key of the map that they are in, as the table names them.
    static HashSet<string> Keys()
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        foreach (
            var (kind, owner) in new[] { ("production", "production"), ("stock", "production"), ("kit", "production"), ("roll", "roll") }
        )
        {
            using var schema = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Sample, "schemas", kind + ".schema.json")));
            Walk(schema.RootElement, schema.RootElement, owner, keys, []);
        }

        return keys;
    }

    // True where there are maps below.
    static bool Walk(JsonElement root, JsonElement at, string owner, HashSet<string> keys, HashSet<(string, string)> seen)
    {
        if (at.ValueKind != JsonValueKind.Object)
        {
            return false;
        }

        if (at.TryGetProperty("$ref", out var reference))
        {
            var name = reference.GetString()!.Split('/')[^1];
            return root.GetProperty("$defs").GetProperty(name) is var definition
                && (seen.Add((name, owner)) ? Walk(root, definition, owner, keys, seen) : HasMaps(root, definition));
        }

        var maps = false;
        foreach (var list in new[] { "oneOf", "anyOf", "allOf" }.Where(l => at.TryGetProperty(l, out _)))
        {
            foreach (var part in at.GetProperty(list).EnumerateArray())
            {
                maps |= Walk(root, part, owner, keys, seen);
            }
        }

        if (at.TryGetProperty("items", out var items))
        {
            maps |= Walk(root, items, owner, keys, seen);
        }

        if (!at.TryGetProperty("properties", out var properties))
        {
            return maps;
        }

        foreach (var property in properties.EnumerateObject())
        {
            // A roll in the production's own file has the keys of one with a file of its own.
            var inside = property.Name == SheetNames.Rolls ? "roll" : property.Name;
            if (!Walk(root, property.Value, inside, keys, seen) && !_names.Contains(owner))
            {
                keys.Add($"{owner}.{property.Name}");
            }
        }

        return true;
    }

    static bool HasMaps(JsonElement root, JsonElement at) => Walk(root, at, "", [], []);

    [GeneratedRegex(@"^\| `(?<key>[^`]+)` \|( [^|]* \|){4}(?<words>[^|]*)\|")]
    private static partial Regex Row();

    [GeneratedRegex("`(?<name>(?!scripts/)[a-z]+/[a-z0-9-]+)`")]
    private static partial Regex Name();
}
