using System.Text.Json;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Shipping;

/// <summary>One consignment a lab out of all productions of a school.</summary>
public sealed class ShipTests : IDisposable
{
    const string Harbour = "shipments/2026-10-16-harbour-film-lab/";
    const string Brackwater = "shipments/2026-10-16-brackwater-film-laboratory/";

    readonly SchoolBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Each_lab_gets_one_consignment_with_every_can_that_waits()
    {
        var (status, printed, error) = _bench.Ship();

        Assert.Equal((0, ""), (status, error));
        Assert.Equal(["FERRY/R01/G", "HERON/R01/6", "HERON/R02/4"], CodesIn(Harbour).Order());
        Assert.Equal(2, CodesIn(Brackwater).Count);
        Assert.DoesNotContain(CodesIn(Brackwater), code => code.StartsWith("TIDE/R01", StringComparison.Ordinal));
        Assert.Contains("Still in a camera, so it stays here: FERRY R02.", printed, StringComparison.Ordinal);
        foreach (var file in (string[])["consignment.yaml", "order.pdf", "order.html", "labels.pdf", "packing-list.pdf", "manifest.json"])
        {
            Assert.True(File.Exists(Path.Combine(_bench.School, Harbour, file)), file);
        }
    }

    [Fact]
    public void What_went_does_not_go_twice()
    {
        _bench.Ship();
        var (status, printed, _) = _bench.Ship();

        Assert.Equal(0, status);
        Assert.Contains("Nothing to ship", printed, StringComparison.Ordinal);
        Assert.Equal(2, Directory.GetDirectories(_bench.Shipments).Length);
    }

    [Fact]
    public void A_dry_run_lists_every_can_and_writes_nothing()
    {
        var (status, printed, _) = _bench.Ship("--dry-run");

        Assert.Equal(0, status);
        Assert.Contains("HERON/R02/4", printed, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.Shipments));
    }

    [Fact]
    public void A_can_is_on_one_order_one_label_and_one_line_of_each_list_in_packing_order()
    {
        _bench.Ship();
        var codes = CodesIn(Harbour);
        var order = string.Concat(Pages.TextOf(Path.Combine(_bench.School, Harbour, "order.pdf")));
        var labels = string.Concat(Pages.TextOf(Path.Combine(_bench.School, Harbour, "labels.pdf")));
        var packing = string.Concat(Pages.TextOf(Path.Combine(_bench.School, Harbour, "packing-list.pdf")));

        Assert.All(codes, code => Assert.Contains(code, order, StringComparison.Ordinal));
        Assert.Equal(codes, codes.OrderBy(c => packing.IndexOf(c, StringComparison.Ordinal)));
        // Small type breaks over lines and is read across two labels; the name in large type is at one height.
        Assert.Equal(codes, codes.OrderBy(c => labels.IndexOf(c[..^2].Replace('/', ' '), StringComparison.Ordinal)));
        Assert.All([labels, packing], text => Assert.All(codes, code => Assert.Equal(2, text.Split(code).Length)));
        using var manifest = JsonDocument.Parse(_bench.Text(Harbour + "manifest.json"));
        var cans = manifest.RootElement.GetProperty("cans").EnumerateArray().ToList();
        Assert.Equal(codes, cans.Select(c => c.GetProperty("can").GetString()));
        Assert.Equal(codes, Rows(Harbour).Select(row => row[2]));
        Assert.Equal(
            FileState.Of(Path.Combine(_bench.School, "heron", "production.yaml")),
            cans.First(c => c.GetProperty("production").GetString() == "HERON").GetProperty("record-sha256").GetString()
        );
        Assert.All(manifest.RootElement.GetProperty("files-sha256").EnumerateObject(), f =>
            Assert.Equal(FileState.Of(Path.Combine(_bench.School, Harbour, f.Name)), f.Value.GetString())
        );
    }

    [Fact]
    public void A_production_without_errors_can_go_while_another_one_waits_for_its_own()
    {
        _bench.Rewrite("ferry/production.yaml", "lot: C\n", "lot: Z\n");

        var (status, printed, error) = _bench.Ship();
        Assert.Equal(1, status);
        Assert.Contains("ferry/production.yaml:", printed, StringComparison.Ordinal);
        Assert.Contains("Nothing was shipped", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.Shipments));

        Assert.Equal(0, _bench.Ship("--without", "ferry").Status);
        Assert.Equal(["HERON/R01/6", "HERON/R02/4"], CodesIn(Harbour));
    }

    [Fact]
    public void Two_productions_with_one_code_are_found_before_anything_is_printed()
    {
        _bench.Rewrite("ferry/production.yaml", "code: FERRY", "code: her-on");

        var (status, printed, _) = _bench.Ship();

        Assert.Equal(1, status);
        Assert.Contains("heron/production.yaml:4:7: error: The code HERON", printed, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.Shipments));
    }

    [Fact]
    public void Two_productions_with_one_title_are_named_and_go()
    {
        _bench.Rewrite("ferry/production.yaml", "The Ferry Light", "The Heron");

        var (status, printed, _) = _bench.Ship();

        Assert.Equal(0, status);
        Assert.Contains("warning: HERON has the title of FERRY", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_process_that_the_lab_does_not_run_stops_it_even_where_only_another_production_says_what_it_runs()
    {
        _bench.Rewrite("ferry/production.yaml", "  processes: [ecn-2, bw-negative]\n", "");
        _bench.Rewrite("ferry/production.yaml", "process: ecn-2, length", "process: bw-reversal, length");

        var (status, printed, _) = _bench.Ship();

        Assert.Equal(1, status);
        Assert.Contains("Harbour Film Lab does not run bw-reversal", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void One_lab_alone_can_be_served_and_a_misspelt_one_is_asked_about()
    {
        var (status, _, error) = _bench.Ship("--lab", "Harbor Film Lab");
        Assert.Equal(2, status);
        Assert.Contains("Did you mean Harbour Film Lab?", error, StringComparison.Ordinal);

        Assert.Equal(0, _bench.Ship("--lab", "harbour film lab").Status);
        Assert.Single(Directory.GetDirectories(_bench.Shipments));
    }

    [Fact]
    public void Two_people_who_ship_at_once_make_one_consignment()
    {
        var shipped = Enumerable.Range(0, 2).AsParallel().WithDegreeOfParallelism(2).Select(_ => _bench.Ship()).ToList();

        Assert.Contains(shipped, s => s.Status == 0);
        Assert.All(shipped, s => Assert.True(s.Status is ExitStatus.Well or ExitStatus.Busy, s.Error));
        Assert.Equal(2, Directory.GetDirectories(_bench.Shipments).Length);
    }

    [Fact]
    public void The_order_has_its_words_in_German_too()
    {
        foreach (var production in (string[])["heron", "ferry"])
        {
            _bench.Rewrite($"{production}/production.yaml", "language: en", "language: de");
        }

        Assert.Equal(0, _bench.Ship().Status);
        var order = string.Concat(Pages.TextOf(Path.Combine(_bench.School, Harbour, "order.pdf")));
        Assert.Contains("Nach Prozess und Push", order, StringComparison.Ordinal);
        Assert.DoesNotContain("By production", order, StringComparison.Ordinal);
    }

    List<string> CodesIn(string folder) => [.. Rows(folder).OrderBy(r => int.Parse(r[0], null)).Select(r => r[2])];

    // No title of the small school has a comma but one, behind the columns that are read.
    List<string[]> Rows(string folder) =>
        [.. _bench.Text(folder + "manifest.csv").Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(l => l.Split(','))];
}
