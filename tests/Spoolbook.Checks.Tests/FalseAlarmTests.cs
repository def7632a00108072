using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Reading.Files;
using Xunit.Abstractions;

namespace Spoolbook.Checks.Tests;

/// <summary>A false alarm is worse than a miss: productions with nothing wrong bring no finding.</summary>
public class FalseAlarmTests(ITestOutputHelper output)
{
    static readonly string Invented = Path.Combine(AppContext.BaseDirectory, "productions");

    static readonly string[] Names =
    [
        .. Directory.GetDirectories(Invented).Where(HoldsFiles).Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal),
    ];

    public static TheoryData<string> Productions => [.. Names];

    [Theory]
    [MemberData(nameof(Productions))]
    public void Nothing_is_found_in_a_production_that_is_right(string name) =>
        Assert.Equal("", WholeRun.Of(new FolderFiles(FolderOrFile(Path.Combine(Invented, name)))).Listed());

    // A build deletes the files of a removed production but leaves its folder.
    static bool HoldsFiles(string folder) => Directory.EnumerateFiles(folder, "*.yaml").Any();

    // Some productions are one big file of any name.
    static string FolderOrFile(string folder) =>
        File.Exists(Path.Combine(folder, "production.yaml")) ? folder : Directory.GetFiles(folder, "*.yaml").Single();

    [Fact]
    public void The_count_of_false_alarms_over_all_of_them_is_none()
    {
        var alarms = Names.ToDictionary(
            name => name,
            name => WholeRun.Of(new FolderFiles(FolderOrFile(Path.Combine(Invented, name)))).Findings.Length
        );
        output.WriteLine($"{alarms.Values.Sum()} false alarms in {alarms.Count} clean productions: {string.Join(", ", Names)}");

        Assert.Equal(0, alarms.Values.Sum());
    }

    [Fact]
    public void There_are_clean_productions_of_eight_characters() => Assert.True(Productions.Count >= 8);
}
