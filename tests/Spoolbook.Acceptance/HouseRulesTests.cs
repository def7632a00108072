namespace Spoolbook.Acceptance;

/// <summary>A department's own rules for every check, from the sheet to the papers.</summary>
public sealed class HouseRulesTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_wrap_summary_shows_what_the_production_changed_and_nothing_where_it_changed_nothing()
    {
        var production = _bench.CopyOf(Repository.Sample);
        File.AppendAllText(
            Path.Combine(production, "production.yaml"),
            "\nrules:\n  levels: {speed/spring-overrun: note, cover: off}\n  tolerances: {spring-slack: 1+00}\n"
        );
        _bench.Run("make", production, "--out", "ours");
        _bench.Run("make", Repository.Sample, "--out", "house");

        var ours = Words(_bench.PathOf("ours/wrap-summary.pdf"));
        Assert.Contains("Rules changed for this production", ours, StringComparison.Ordinal);
        Assert.Contains("speed/spring-overrun warning note", ours, StringComparison.Ordinal);
        Assert.Contains("cover/shot-not-listed warning off", ours, StringComparison.Ordinal);
        Assert.Contains("spring-slack 20fr 1+00", ours, StringComparison.Ordinal);
        Assert.DoesNotContain("sets for itself", Words(_bench.PathOf("house/wrap-summary.pdf")), StringComparison.Ordinal);
    }

    static string Words(string pdf) => string.Join(' ', Pages.TextOf(pdf));
}
