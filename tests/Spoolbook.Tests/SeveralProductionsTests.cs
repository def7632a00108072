using System.Text.Json;

namespace Spoolbook.Tests;

/// <summary>A department checks the productions of a folder in one go.</summary>
public sealed class SeveralProductionsTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_folder_of_productions_means_all_of_them_in_the_order_of_their_names()
    {
        Copies("term/second/goat", "term/first/ferry");
        var (status, printed, error) = _bench.Run("check", "term");

        Assert.Equal(0, status);
        Assert.Empty(error);
        var first = printed.IndexOf("term/first/ferry: 4 warnings", StringComparison.Ordinal);
        var second = printed.IndexOf("term/second/goat: 4 warnings", StringComparison.Ordinal);
        Assert.True(first >= 0 && second > first, printed);
        Assert.EndsWith("2 productions: no errors, 8 warnings, no notes.\n", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_of_one_of_several_names_the_file_with_its_production()
    {
        Copies("term/ferry", "term/goat");
        Assert.Contains("term/ferry/rolls/", _bench.Run("check", "term").Out, StringComparison.Ordinal);
        Assert.Contains("\nrolls/", "\n" + _bench.Run("check", "term/ferry").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_productions_can_be_named()
    {
        Copies("ferry", "goat", "moth");
        var printed = _bench.Run("check", "moth", "ferry", "ferry/kit.yaml").Out;
        Assert.Contains("moth: ", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("goat: ", printed, StringComparison.Ordinal);
        Assert.Contains("2 productions: ", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Errors_in_one_production_stop_no_other_and_end_in_status_1()
    {
        Copies("term/ferry", "term/goat");
        File.AppendAllText(_bench.PathOf("term/ferry/kit.yaml"), "bodys: []\n");
        var (status, printed, _) = _bench.Run("check", "term");
        Assert.Equal(1, status);
        Assert.Contains("term/goat: ", printed, StringComparison.Ordinal);
        Assert.Contains("Errors in term/ferry.", printed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("json")]
    [InlineData("sarif")]
    public void Programs_get_one_document_over_several(string format)
    {
        Copies("term/ferry", "term/goat");
        using var json = JsonDocument.Parse(_bench.Run("check", "term", "--format", format).Out);
        Assert.Equal(2, json.RootElement.GetProperty(format == "json" ? "productions" : "runs").GetArrayLength());
    }

    [Fact]
    public void A_production_that_is_named_alone_prints_as_it_always_did()
    {
        Copies("term/ferry");
        var alone = _bench.RunIn("term/ferry", "check").Out;
        Assert.Equal(alone, _bench.Run("check", "term/ferry").Out);
        Assert.DoesNotContain("1 production:", alone, StringComparison.Ordinal);
    }

    void Copies(params string[] names)
    {
        foreach (var name in names)
        {
            _bench.CopyOf(Repository.Sample, name);
        }
    }
}
