using System.Text.Json;
using System.Xml.Linq;
using Spoolbook.Acceptance.Folders;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Spoolbook.Acceptance;

/// <summary>Text that looks like a template, HTML or a formula is printed as written and does nothing.</summary>
public sealed class HostileTextTests : IDisposable
{
    const string Hostile = "</td></style><script>alert(1)</script><b>{{ 1 + 1 }}{{ include 'x' }}&lt;";

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Text_that_looks_like_a_template_or_a_page_is_printed_as_written_from_every_key()
    {
        var keys = TextKeys();
        Assert.Superset(
            new HashSet<string> { "title", "roll", "lot", "note", "name", "address", "agreed", "scene", "reason", "what" },
            keys
        );
        foreach (var file in Repository.FilesOf(Repository.Sample))
        {
            var to = _bench.PathOf(Path.Combine("production", Path.GetRelativePath(Repository.Sample, file)));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.WriteAllText(
                to,
                file.EndsWith(".yaml", StringComparison.Ordinal) ? Poisoned(File.ReadAllText(file), keys) : File.ReadAllText(file)
            );
        }

        var (_, printed, error) = _bench.Run("make", "production", "--draft", "--out", "papers");

        Assert.DoesNotContain("No paper was written", error, StringComparison.Ordinal);
        Assert.DoesNotContain("paper/template", printed, StringComparison.Ordinal);
        var papers = _bench.PathOf("papers");
        Assert.All(Directory.GetFiles(papers, "*.html").Where(page => !page.EndsWith("pocket-log.html", StringComparison.Ordinal)), page =>
        {
            var text = File.ReadAllText(page);
            Assert.Equal(1, Occurrences(text, "</style>"));
            Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
            var article = XElement.Parse(
                text[text.IndexOf("<article", StringComparison.Ordinal)..text.IndexOf("</main>", StringComparison.Ordinal)]
            );
            Assert.DoesNotContain(article.Descendants(), e => e.Name.LocalName is "b" or "script");
            Assert.True(Occurrences(article.Value, Hostile) > 1);
            Assert.DoesNotContain("<b>2", article.Value, StringComparison.Ordinal);
        });
        var pocketLog = File.ReadAllText(Path.Combine(papers, "pocket-log.html"));
        Assert.Equal((1, 2, 2), (Occurrences(pocketLog, "</style"), Occurrences(pocketLog, "<script"), Occurrences(pocketLog, "</script")));
        var data = pocketLog[(pocketLog.IndexOf("id=\"production\">", StringComparison.Ordinal) + "id=\"production\">".Length)..];
        using var known = JsonDocument.Parse(data[..data.IndexOf("</script>", StringComparison.Ordinal)]);
        Assert.EndsWith(Hostile, known.RootElement.GetProperty("title").GetString(), StringComparison.Ordinal);
        Assert.All(Directory.GetFiles(papers, "*.pdf"), paper =>
            Assert.Contains("<script>", string.Concat(Pages.TextOf(paper)), StringComparison.Ordinal)
        );
        using var ledger = JsonDocument.Parse(File.ReadAllText(Path.Combine(papers, "ledger.json")));
        Assert.EndsWith(Hostile, ledger.RootElement.GetProperty("production").GetProperty("title").GetString(), StringComparison.Ordinal);
        // Names of rolls and bodies go into file names, where nothing of this is allowed.
        Assert.All(Directory.GetFiles(papers), paper => Assert.Matches("^[A-Za-z0-9._-]+$", Path.GetFileName(paper)));
    }

    [Fact]
    public void A_tab_in_the_name_of_a_roll_reaches_no_terminal()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var roll = Path.Combine(production, "rolls", "r05.yaml");
        File.WriteAllText(roll, File.ReadAllText(roll).Replace("roll: R05", "roll: \"R\\t05\"", StringComparison.Ordinal));

        var printed = _bench.Run("check", production).Out;

        Assert.Contains("Not looked at", printed, StringComparison.Ordinal);
        Assert.DoesNotContain(printed, c => char.IsControl(c) && c != '\n');
    }

    static int Occurrences(string text, string part) => text.Split(part).Length - 1;

    /// <summary>The keys that take any text, by the published schema.</summary>
    static HashSet<string> TextKeys()
    {
        var keys = new HashSet<string>();
        using var schema = JsonDocument.Parse(InProcess.Run(Repository.Sample, "schema", "one-file").Said);
        Collect(schema.RootElement, schema.RootElement, keys);
        // The name of a check must be one of the house's, and a made-up one is flagged.
        keys.Remove("check");
        // The name of a file is a reference too.
        keys.Remove("logo");
        return keys;
    }

    static void Collect(JsonElement at, JsonElement schema, HashSet<string> keys)
    {
        if (at.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in at.EnumerateArray())
            {
                Collect(item, schema, keys);
            }
        }
        else if (at.ValueKind == JsonValueKind.Object)
        {
            if (at.TryGetProperty("properties", out var properties) && properties.ValueKind == JsonValueKind.Object)
            {
                keys.UnionWith(
                    properties
                        .EnumerateObject()
                        .Where(p => p.Value.ValueKind == JsonValueKind.Object && TakesAnyText(p.Value, schema))
                        .Select(p => p.Name)
                );
            }

            foreach (var property in at.EnumerateObject())
            {
                Collect(property.Value, schema, keys);
            }
        }
    }

    static bool TakesAnyText(JsonElement key, JsonElement schema) =>
        (
            key.TryGetProperty("$ref", out var form)
            && TakesAnyText(schema.GetProperty("$defs").GetProperty(form.GetString()!["#/$defs/".Length..]), schema)
        )
        || (key.TryGetProperty("items", out var items) && TakesAnyText(items, schema))
        || (
            key.TryGetProperty("type", out var type)
            && type.ValueKind == JsonValueKind.String
            && type.GetString() == "string"
            && !key.TryGetProperty("pattern", out _)
            && !key.TryGetProperty("enum", out _)
        )
        || (key.TryGetProperty("anyOf", out var forms) && forms.EnumerateArray().Any(f => TakesAnyText(f, schema)));

    static string Poisoned(string yaml, HashSet<string> keys)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        Poison(stream.Documents[0].RootNode, keys);
        using var text = new StringWriter();
        stream.Save(text, assignAnchors: false);
        return text.ToString();
    }

    static void Poison(YamlNode node, HashSet<string> keys)
    {
        if (node is YamlSequenceNode list)
        {
            foreach (var item in list)
            {
                Poison(item, keys);
            }
        }
        else if (node is YamlMappingNode map)
        {
            foreach (var (key, value) in map.Children)
            {
                IEnumerable<YamlNode> within = value is YamlSequenceNode inner ? inner.Children : [value];
                foreach (var scalar in within.OfType<YamlScalarNode>().Where(_ => keys.Contains(((YamlScalarNode)key).Value!)))
                {
                    (scalar.Value, scalar.Style) = (scalar.Value + Hostile, ScalarStyle.DoubleQuoted);
                }

                Poison(value, keys);
            }
        }
    }
}
