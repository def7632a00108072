using System.Globalization;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance.House;

public sealed partial class GuideTests
{
    const int MostStops = 18;

    static readonly string Guide = File.ReadAllText(Path.Combine(Repository.Root, "DEVELOPERS.md"));

    static readonly string Tour = Guide.Split("\n## ").Single(part => part.StartsWith("A tour of the house", StringComparison.Ordinal));

    [Fact]
    public void The_tour_of_the_house_has_few_stops()
    {
        var stops = Stop().Matches(Tour);
        Assert.Equal(
            Enumerable.Range(1, stops.Count).Select(n => n.ToString(CultureInfo.InvariantCulture)),
            stops.Select(s => s.Groups["number"].Value)
        );
        Assert.InRange(stops.Count, 1, MostStops);
        Assert.Equal(stops.Count, stops.DistinctBy(s => s.Groups["file"].Value).Count());
    }

    [Fact]
    public void What_the_tour_passes_on_its_way_is_there()
    {
        var files = Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories);
        var missing = BareFile().Matches(Tour).Select(m => m.Groups[1].Value).Except(files.Select(f => Path.GetFileName(f)));
        Assert.Empty(missing);
    }

    [Fact]
    public void Every_path_that_the_guide_names_is_there()
    {
        var paths = NamedPath().Matches(Guide).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(paths);
        Assert.DoesNotContain(paths, path => !Path.Exists(Path.Combine(Repository.Root, path)));
    }

    [GeneratedRegex("^(?<number>[0-9]+)\\. `(?<file>[^`]+)`", RegexOptions.Multiline)]
    private static partial Regex Stop();

    [GeneratedRegex("`([A-Za-z]+\\.cs)`")]
    private static partial Regex BareFile();

    // With what a script is given, as in `scripts/test Film`.
    [GeneratedRegex("`((?:src|tests|scripts|templates|sample-production)(?:/[^` ]*)?|\\.ci/[^` ]+)(?: [^`]*)?`")]
    private static partial Regex NamedPath();
}
