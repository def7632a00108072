using System.Text.Json;

namespace Spoolbook.Tests;

/// <summary>The command <c>check</c> as a shell sees it.</summary>
public sealed class CheckCommandTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Findings_can_be_read_by_programs()
    {
        var (status, printed, _) = _bench.Run("check", Repository.Sample, "--format", "json");

        Assert.Equal(0, status);
        using var json = JsonDocument.Parse(printed);
        Assert.Equal(0, json.RootElement.GetProperty("counts").GetProperty("errors").GetInt32());
        Assert.Equal(
            json.RootElement.GetProperty("counts").GetProperty("warnings").GetInt32(),
            json.RootElement.GetProperty("findings").EnumerateArray().Count(f => f.GetProperty("level").GetString() == "warning")
        );
    }

    [Fact]
    public void Checking_writes_nothing()
    {
        var production = _bench.CopyOf(Repository.Sample);
        _bench.Run("check", production);

        Assert.False(Directory.Exists(Path.Combine(production, "papers")));
    }

    [Fact]
    public void A_folder_without_a_production_is_a_finding_and_not_a_stack_trace()
    {
        Directory.CreateDirectory(_bench.PathOf("empty"));
        var (status, printed, error) = _bench.Run("check", "empty");

        Assert.Equal(1, status);
        Assert.Contains("[sheet/", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", printed + error, StringComparison.Ordinal);
    }

    [Fact]
    public void Colour_is_printed_only_where_it_is_wanted()
    {
        Assert.DoesNotContain('\u001b', _bench.Run("check", Repository.Sample).Out);
    }
}
