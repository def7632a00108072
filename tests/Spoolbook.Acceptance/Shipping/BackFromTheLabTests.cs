namespace Spoolbook.Acceptance.Shipping;

/// <summary>What the lab said of a roll, on the roll's own report.</summary>
public sealed class BackFromTheLabTests : IDisposable
{
    readonly SchoolBench _bench = new();

    public BackFromTheLabTests() => _bench.Ship();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Lights_and_faults_are_on_the_report_of_their_roll_and_on_no_other()
    {
        Make();
        Assert.DoesNotContain("Back from the lab", Report("R01"), StringComparison.Ordinal);

        _bench.Run(
            "receive",
            "school",
            "HERON/R01/6",
            "--on",
            "2026-10-24",
            "--lights",
            "1/1 27-31-25",
            "--note",
            "31+12 Scratch on the left"
        );
        Make();

        Assert.Contains(
            "Back from the lab Processed, back Sat 24 Oct 2026. Lights, red-green-blue: 1/1 27-31-25 At 31+12: Scratch on the left",
            Report("R01"),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("Back from the lab", Report("R02"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_can_that_came_back_unprocessed_says_so()
    {
        _bench.Run("receive", "school", "HERON/R01/6", "--on", "2026-10-24", "--unprocessed", "HERON/R01/6");
        Make();

        Assert.Contains("Back Sat 24 Oct 2026, NOT PROCESSED", Report("R01"), StringComparison.Ordinal);
    }

    void Make() => Assert.Equal(0, _bench.Run("make", "school/heron").Status);

    string Report(string roll) => PageText.Of(Path.Combine(_bench.School, "heron", "papers", $"camera-report-{roll}.html"));
}
