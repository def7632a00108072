using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Spoolbook.Acceptance.House;

/// <summary>What Spoolbook is built from: the table in DEVELOPERS.md, the lock files, the notices and the bill of materials.</summary>
public sealed partial class DependencyTests
{
    static readonly (string Name, string Version, string Licence)[] Table =
    [
        .. Row().Matches(Text("DEVELOPERS.md")).Select(m => (m.Groups[1].Value, m.Groups[2].Value, m.Groups[3].Value)),
    ];

    [Fact]
    public void The_table_of_dependencies_has_each_package_with_its_version()
    {
        var props = XDocument.Parse(Text("Directory.Packages.props"));
        var pinned = props
            .Descendants("PackageVersion")
            .Select(p => (p.Attribute("Include")!.Value, p.Attribute("Version")!.Value))
            .Append(("Avalonia.Fonts.Inter", props.Descendants("InterFontVersion").Single().Value));

        Assert.Empty(pinned.Except(Table.Select(row => (row.Name, row.Version))));
        Assert.Equal(Table.DistinctBy(row => row.Name), Table);
    }

    [Fact]
    public void What_is_published_is_in_the_table_and_in_the_notices()
    {
        var notices = Text("THIRD-PARTY-NOTICES");
        foreach (var (name, version) in Published())
        {
            Assert.Contains((name, version), Table.Select(row => (row.Name, row.Version)));
            Assert.Contains(name, notices, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void No_licence_of_what_is_published_forbids_ours() =>
        Assert.Empty(
            from row in Table
            where Published().Any(l => l.Name == row.Name)
            where row.Licence is not ("MIT" or "BSD-2-Clause")
            select row
        );

    [Fact]
    public void The_notices_have_the_licence_of_the_fonts_in_full() =>
        Assert.Contains(Text("src/Spoolbook.Papers/Typesetting/Fonts/OFL.txt"), Text("THIRD-PARTY-NOTICES"), StringComparison.Ordinal);

    [Fact]
    public void Each_project_has_its_lock_without_anything_that_follows_the_sdk() =>
        Assert.All(
            Directory
                .EnumerateFiles(Repository.Root, "*.csproj", SearchOption.AllDirectories)
                .Where(p => Path.GetRelativePath(Repository.Root, p).Split(Path.DirectorySeparatorChar)[0] is "src" or "tests"),
            project =>
            {
                var locked = Path.Combine(Path.GetDirectoryName(project)!, "packages.lock.json");
                Assert.True(File.Exists(locked), locked);
                Assert.DoesNotMatch("(?i)ilcompiler|crossgen|illink|runtime\\.(linux|win|osx)", File.ReadAllText(locked));
            }
        );

    [ToolFact("python3")]
    public void The_bill_of_materials_is_a_bill_and_the_same_each_time()
    {
        var script = Path.Combine(Repository.Root, "scripts", "sbom");
        var (status, text) = Tools.Run("python3", script);
        Assert.Equal(0, status);
        Assert.Equal(text, Tools.Run("python3", script).Output);

        using var json = JsonDocument.Parse(text);
        var bill = json.RootElement;
        Assert.Equal(("CycloneDX", "1.5", 1), (Word(bill, "bomFormat"), Word(bill, "specVersion"), bill.GetProperty("version").GetInt32()));
        var parts = bill.GetProperty("components").EnumerateArray().ToArray();
        Assert.All(parts, part =>
        {
            Assert.Equal("library", Word(part, "type"));
            Assert.Equal($"pkg:nuget/{Word(part, "name")}@{Word(part, "version")}", Word(part, "purl"));
        });
        Assert.Equal(
            Published().Append(("Avalonia.Fonts.Inter", Table.Single(r => r.Name == "Avalonia.Fonts.Inter").Version)).Order(),
            parts.Select(part => (Word(part, "name"), Word(part, "version"))).Order()
        );
        var references = parts
            .Select(p => Word(p, "bom-ref"))
            .Append(Word(bill.GetProperty("metadata").GetProperty("component"), "bom-ref"))
            .ToArray();
        Assert.Equal(references.Distinct(), references);
        Assert.All(bill.GetProperty("dependencies").EnumerateArray(), d =>
            Assert.All(d.GetProperty("dependsOn").EnumerateArray().Select(on => on.GetString()!).Append(Word(d, "ref")), reference =>
                Assert.Contains(reference, references)
            )
        );
    }

    static string Word(JsonElement from, string name) => from.GetProperty(name).GetString()!;

    /// <summary>The packages that the program is published with, by its lock.</summary>
    static (string Name, string Version)[] Published()
    {
        using var json = JsonDocument.Parse(Text("src/Spoolbook/packages.lock.json"));
        return
        [
            .. from framework in json.RootElement.GetProperty("dependencies").EnumerateObject()
            from package in framework.Value.EnumerateObject()
            where Word(package.Value, "type") != "Project"
            where !package.Name.StartsWith("Microsoft.CodeAnalysis.", StringComparison.Ordinal)
            select (package.Name, Word(package.Value, "resolved")),
        ];
    }

    static string Text(string name) => File.ReadAllText(Path.Combine(Repository.Root, name)).ReplaceLineEndings("\n");

    [GeneratedRegex(@"^\| `([\w.]+)` \| ([\w.-]+) \| ([\w.-]+) \|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
