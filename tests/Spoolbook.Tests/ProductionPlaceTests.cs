namespace Spoolbook.Tests;

/// <summary>Which production a command is about.</summary>
public sealed class ProductionPlaceTests : IDisposable
{
    readonly Bench _bench = new();

    public ProductionPlaceTests() => _bench.CopyOf(Repository.Sample);

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("production")]
    [InlineData("production/rolls")]
    [InlineData("production/papers/old")]
    public void Whoever_works_in_a_production_need_not_name_it(string folder)
    {
        Directory.CreateDirectory(_bench.PathOf(folder));

        Assert.Equal(_bench.Run("check", "production"), _bench.RunIn(folder, "check"));
    }

    [Theory]
    [InlineData("production/production.yaml")]
    [InlineData("production/stock.yaml")]
    [InlineData("production/rolls/r01.yaml")]
    [InlineData("production/rolls")]
    [InlineData("production/school.svg")]
    [InlineData("./production/../production/kit.yaml")]
    public void A_file_of_a_production_means_its_production(string file)
    {
        Assert.Equal(_bench.Run("check", "production"), _bench.Run("check", file));
    }

    [Fact]
    public void The_places_of_findings_lead_there_from_where_the_command_was_started()
    {
        var (_, said, _) = _bench.RunIn("production/rolls", "check", "r01.yaml", "--format", "sarif");

        Assert.Contains("\"rolls/r02.yaml\"", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_with_a_whole_production_means_itself_also_beside_another_one()
    {
        var alone = Path.Combine(TestFolders.Clean, "hand-held-one-roll", "sunday.yaml");
        var expected = _bench.Run("check", alone);
        File.Copy(alone, _bench.PathOf("production/sunday.yaml"));
        File.Copy(alone, _bench.PathOf("production/kit.yaml"), overwrite: true);

        Assert.Equal(expected, _bench.Run("check", "production/sunday.yaml"));
        Assert.Equal(expected.Out.Split('\n')[^2], _bench.Run("check", "production/kit.yaml").Out.Split('\n')[^2]);
    }

    [Fact]
    public void The_nearest_production_is_meant_where_one_lies_in_another()
    {
        _bench.CopyOf(Path.Combine(TestFolders.Clean, "passes"), "production/rolls/other");

        Assert.Equal(_bench.Run("check", "production/rolls/other"), _bench.RunIn("production/rolls/other", "check"));
    }

    [Fact]
    public void Where_there_is_no_production_the_command_says_so()
    {
        Assert.Equal(
            (
                2,
                "",
                "spoolbook: there is no production.yaml here or in a folder above. Name the production's folder.\n"
                    + "Try: spoolbook check --help\n"
            ),
            _bench.Run("check")
        );
    }

    [Fact]
    public void Help_can_be_asked_for_in_a_word()
    {
        Assert.Equal(_bench.Run("check", "--help"), _bench.Run("help", "check"));
        Assert.Equal(0, _bench.Run("help", "check").Status);
    }
}
