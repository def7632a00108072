using System.Text.Json;
using System.Text.RegularExpressions;
using Spoolbook.Checks;
using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Acceptance;

/// <summary>
/// The film still needed is one figure everywhere: in the finding that it runs out, in the wrap summary and in the
/// ledger.
/// </summary>
public sealed partial class FilmNeededTests : IDisposable
{
    const string RunsOut = "stock/runs-out";

    readonly Bench _bench = new();
    readonly string _production;

    public FilmNeededTests()
    {
        _production = _bench.CopyOf(Repository.Sample);
        var planting = Planting.Of(Catalogue.Page(RunsOut)!).Single();
        var planted = planting.Planted();
        foreach (var file in planting.Files)
        {
            File.WriteAllText(Path.Combine(_production, file), planted.Open(file).Text);
        }
    }

    public void Dispose() => _bench.Dispose();

    // The summary's own figure is the one to order by; the plain average is the finding's and the ledger's.
    [Fact]
    public void The_finding_and_the_ledger_have_the_same_film_needed_and_the_same_film_left()
    {
        Assert.Equal(0, _bench.Run("make", _production, "--out", "papers").Status);
        var summary = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/wrap-summary.pdf")));
        var forecast = JsonDocument.Parse(File.ReadAllBytes(_bench.PathOf("papers/ledger.json"))).RootElement.GetProperty("forecast");
        var found = Finding().Match(summary);

        Assert.True(found.Success, summary);
        Assert.Equal(
            forecast.GetProperty("shots-left").GetInt32().ToString(System.Globalization.CultureInfo.InvariantCulture),
            found.Groups["shots"].Value
        );
        Assert.Contains(found.Groups["needed"].Value, forecast.ToString(), StringComparison.Ordinal);
        Assert.Contains(found.Groups["there"].Value, forecast.ToString(), StringComparison.Ordinal);
        Assert.Single(Needed().Matches(summary));
    }

    [Fact]
    public void Where_the_production_wants_more_shots_to_go_on_neither_goes_on_them()
    {
        File.AppendAllText(Path.Combine(_production, "production.yaml"), "\nrules:\n  tolerances: {shots-to-go-on: 90}\n");
        Assert.Equal(0, _bench.Run("make", _production, "--out", "papers").Status);
        var summary = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/wrap-summary.pdf")));

        Assert.Contains("Odds from 90 on", summary, StringComparison.Ordinal);
        Assert.DoesNotContain("film runs out at shot", summary, StringComparison.Ordinal);
    }

    [GeneratedRegex(
        @"film runs out at shot [^:]+: (?<shots>\d+) shots? to come need about (?<needed>\d+\+\d\d), and (?<there>\d+\+\d\d) is left"
    )]
    private static partial Regex Finding();

    [GeneratedRegex(@"\d+ ft: 80 % sure")]
    private static partial Regex Needed();
}
