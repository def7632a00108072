namespace Spoolbook.Acceptance;

/// <summary>The command as a shell sees it.</summary>
public sealed class CommandTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_production_without_errors_ends_well_and_says_what_was_written()
    {
        var (status, printed, _) = _bench.Run("make", Repository.Sample, "--out", "papers");

        Assert.Equal(0, status);
        Assert.Contains("lab-order.pdf", printed, StringComparison.Ordinal);
        Assert.Contains("no errors", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_go_beside_the_sheets_by_default()
    {
        var production = _bench.CopyOf(Repository.Sample);
        _bench.Run("make", production);

        Assert.True(File.Exists(Path.Combine(production, "papers", "index.html")));
    }

    [Fact]
    public void Two_runs_give_the_same_bytes()
    {
        _bench.Run("make", Repository.Sample, "--out", "one");
        _bench.Run("make", Repository.Sample, "--out", "two");

        Assert.Equal(Bench.Bytes(_bench.PathOf("one")), Bench.Bytes(_bench.PathOf("two")));
    }

    [Fact]
    public void With_an_error_no_paper_is_written_over()
    {
        var production = _bench.CopyOf(Repository.Sample);
        _bench.Run("make", production);
        var before = Bench.Bytes(Path.Combine(production, "papers"));
        Break(production);

        var (status, printed, error) = _bench.Run("make", production);

        Assert.Equal(1, status);
        Assert.Contains("stock/unknown-lot", printed, StringComparison.Ordinal);
        Assert.Contains("No paper was written", error, StringComparison.Ordinal);
        Assert.Equal(before, Bench.Bytes(Path.Combine(production, "papers")));
    }

    [Fact]
    public void A_draft_is_printed_in_spite_of_errors_and_says_so_on_its_pages()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Break(production);

        var (status, _, _) = _bench.Run("make", production, "--draft");

        Assert.Equal(1, status);
        var papers = Path.Combine(production, "papers");
        Assert.Contains("Draft", File.ReadAllText(Path.Combine(papers, "lab-order.html")), StringComparison.Ordinal);
        foreach (var page in Pages.TextOf(Path.Combine(papers, "lab-order.pdf")))
        {
            Assert.Contains("DRAFT", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_broken_template_is_flagged_with_its_place_and_yesterdays_papers_stay()
    {
        _bench.Run("make", Repository.Sample, "--out", "papers");
        var before = Bench.Bytes(_bench.PathOf("papers"));
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(Path.Combine(_bench.PathOf("own"), "lab-order.html"), "<article>\n<p>{{ lbaorder }}</p>\n</article>\n");

        var (status, printed, error) = _bench.Run("make", Repository.Sample, "--out", "papers", "--templates", "own");

        Assert.Equal(1, status);
        Assert.Contains("lab-order.html:2:", printed, StringComparison.Ordinal);
        Assert.Contains("No paper was written", error, StringComparison.Ordinal);
        Assert.Equal(before, Bench.Bytes(_bench.PathOf("papers")));
    }

    [Fact]
    public void A_users_own_template_replaces_the_houses()
    {
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(Path.Combine(_bench.PathOf("own"), "lab-order.html"), "<article><h1>For {{ lab }}</h1></article>");

        _bench.Run("make", Repository.Sample, "--out", "papers", "--templates", "own");

        Assert.Contains("<h1>For ", File.ReadAllText(_bench.PathOf("papers/lab-order.html")), StringComparison.Ordinal);
        Assert.Contains("For ", Pages.TextOf(_bench.PathOf("papers/lab-order.pdf"))[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mkae")]
    [InlineData("make")]
    [InlineData("make", "x", "--frobnicate")]
    public void Used_wrongly_the_command_says_so_with_status_2(params string[] args)
    {
        var (status, _, error) = _bench.Run(args);

        Assert.Equal(2, status);
        Assert.Contains("--help", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shelf_that_cannot_be_written_to_ends_with_status_3()
    {
        File.WriteAllText(_bench.PathOf("papers"), "a file where the folder should be");

        var (status, _, error) = _bench.Run("make", Repository.Sample, "--out", "papers");

        Assert.Equal(3, status);
        Assert.StartsWith("spoolbook: ", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        "spoolbook: say what to do: "
            + "new, make, watch, check, status, log, load, unload, import, ship, receive, explain, schema, reckon, completion.\n"
            + "Try: spoolbook --help\n"
    )]
    [InlineData("spoolbook: there is no 'chek'. Did you mean check?\nTry: spoolbook --help\n", "chek", "sample")]
    [InlineData(
        "spoolbook: there is no 'frobnicate'. There are: "
            + "new, make, watch, check, status, log, load, unload, import, ship, receive, explain, schema, reckon, completion.\n"
            + "Try: spoolbook --help\n",
        "frobnicate"
    )]
    [InlineData(
        "spoolbook: there is no production.yaml here or in a folder above. Name the production's folder.\nTry: spoolbook make --help\n",
        "make"
    )]
    [InlineData("spoolbook: there is no option '--loud' here.\nTry: spoolbook --help\n", "--loud")]
    public void A_slip_on_the_command_line_is_answered_with_what_to_type(string told, params string[] args)
    {
        var (status, printed, error) = _bench.Run(args);

        Assert.Equal((2, "", told), (status, printed, error));
    }

    static void Break(string production)
    {
        var roll = Path.Combine(production, "rolls", "r01.yaml");
        File.WriteAllText(roll, File.ReadAllText(roll).Replace("lot: N250-A", "lot: N250-Z", StringComparison.Ordinal));
    }
}
