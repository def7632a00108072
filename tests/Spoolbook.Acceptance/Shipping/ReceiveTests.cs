namespace Spoolbook.Acceptance.Shipping;

/// <summary>What came back from the lab.</summary>
public sealed class ReceiveTests : IDisposable
{
    const string Harbour = "shipments/2026-10-16-harbour-film-lab/consignment.yaml";

    readonly SchoolBench _bench = new();

    public ReceiveTests() => _bench.Ship();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_can_that_comes_back_is_added_to_the_record_and_nothing_else_in_it_changes()
    {
        var before = _bench.Text(Harbour) + "# Called the lab: two more on Monday.\n";
        File.AppendAllText(Path.Combine(_bench.School, Harbour), "# Called the lab: two more on Monday.\n");

        var (status, printed, error) = _bench.Run(
            "receive",
            "school",
            "HERON/R01/6",
            "--on",
            "2026-10-24",
            "--by",
            "ines",
            "--lights",
            "1/1 27-31-25",
            "--note",
            "31+12 Scratch on the left"
        );

        Assert.Equal((0, ""), (status, error));
        Assert.Equal(
            before
                + "received:\n  - {can: HERON/R01/6, on: 2026-10-24, by: ines, "
                + "lights: [1/1 27-31-25], faults: [31+12 Scratch on the left]}\n",
            _bench.Text(Harbour)
        );
        Assert.Contains("1 of 3 cans back", printed, StringComparison.Ordinal);
        Assert.Contains("box 1: FERRY/R01/G, HERON/R02/4", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hand_held_reader_types_a_code_a_line()
    {
        var (status, _, error) = _bench.Answer("HERON-R01-6\n\nheron/r02/4\nFERRY/R01/G\n", "receive", "school", "-");

        Assert.Equal((0, ""), (status, error));
        Assert.Equal(3, _bench.Text(Harbour).Split("on: 2026-10-05").Length - 1);
    }

    [Fact]
    public void A_can_that_never_went_is_named_and_the_others_are_marked()
    {
        var (status, _, error) = _bench.Run("receive", "school", "HERON/R01/6", "HERON/R02/X", "OTHER/R01/1");

        Assert.Equal(1, status);
        Assert.Contains("HERON/R02/4 went", error, StringComparison.Ordinal);
        Assert.Contains("'OTHER/R01/1' is no can that went", error, StringComparison.Ordinal);
        Assert.Contains("received:", _bench.Text(Harbour), StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_lab_sends_back_unprocessed_goes_again()
    {
        Assert.Contains("may go again", _bench.Run("receive", "school", "--unprocessed", "HERON/R02/4").Out, StringComparison.Ordinal);

        Assert.Equal(0, _bench.Ship().Status);
        var again = _bench.Text("shipments/2026-10-16-harbour-film-lab-2/manifest.csv");
        Assert.Contains("HERON/R02/4", again, StringComparison.Ordinal);
        Assert.DoesNotContain("HERON/R01", again, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_back_in_the_days_that_the_lab_takes_is_overdue()
    {
        _bench.Rewrite(Harbour, "back-by: 2026-10-26", "back-by: 2026-10-04");

        var (status, printed, _) = _bench.Run("receive", "school");

        Assert.Equal(0, status);
        Assert.Contains("overdue since 2026-10-04", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_box_or_all_of_it_is_marked_at_once()
    {
        Assert.Equal(0, _bench.Run("receive", "school", "--box", "1", "--shipment", "2026-10-16-harbour").Status);
        var (status, printed, _) = _bench.Run("receive", "school", "--all");

        Assert.Equal(0, status);
        Assert.Contains("Nothing is missing", printed, StringComparison.Ordinal);
        Assert.Contains("is back already", _bench.Run("receive", "school", "HERON/R01/6").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_box_of_two_open_consignments_is_asked_about()
    {
        var (status, _, error) = _bench.Run("receive", "school", "--box", "1");

        Assert.Equal(2, status);
        Assert.Contains("--shipment 2026-10-16-brackwater-film-laboratory or 2026-10-16-harbour-film-lab", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_cannot_be_read_stops_shipping_and_receiving()
    {
        _bench.Rewrite(Harbour, "sent: 2026-10-16", "sent: friday");

        Assert.Equal(1, _bench.Run("receive", "school", "--all").Status);
        var (status, printed, _) = _bench.Ship();
        Assert.Equal(1, status);
        Assert.Contains($"{Harbour}:5:7", printed, StringComparison.Ordinal);
    }
}
