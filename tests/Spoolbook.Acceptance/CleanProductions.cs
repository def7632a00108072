using System.Text.Json;
using Spoolbook.Acceptance.Folders;

namespace Spoolbook.Acceptance;

/// <summary>Productions of different kinds without a mistake. Any finding that is not on this list is a false alarm.</summary>
public class CleanProductions
{
    // Findings that are right and worth knowing: name of the folder, check, place.
    static readonly (string Production, string Check, string Where)[] _told = [];

    public static TheoryData<string> All => [.. TestFolders.NamesIn(TestFolders.Clean)];

    [Theory]
    [MemberData(nameof(All))]
    public void A_clean_production_raises_no_false_alarm(string name)
    {
        var folder = Path.Combine(TestFolders.Clean, name);

        var run = InProcess.Run(folder, "check", TestFolders.ProductionIn(folder), "--format", "json");

        Assert.Equal(0, run.Status);
        Assert.Equal(_told.Where(t => t.Production == name).Select(t => $"{t.Check} {t.Where}"), FindingsIn(run.Said));
    }

    [Fact]
    public void The_list_of_right_findings_names_no_removed_production() =>
        Assert.All(_told, t => Assert.Contains(t.Production, TestFolders.NamesIn(TestFolders.Clean)));

    [Fact]
    public void Five_characters_of_shoot_and_three_awkward_ones_are_asked() => Assert.True(All.Count >= 8);

    static IEnumerable<string> FindingsIn(string json)
    {
        using var read = JsonDocument.Parse(json);
        return [.. read.RootElement.GetProperty("findings").EnumerateArray().Select(Report)];
    }

    static string Report(JsonElement finding)
    {
        var place = finding.GetProperty("place");
        return FormattableString.Invariant(
            $"{finding.GetProperty("check").GetString()} {place.GetProperty("file").GetString()}:{place.GetProperty("line").GetInt32()}"
        );
    }
}
