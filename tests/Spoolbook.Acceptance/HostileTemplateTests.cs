namespace Spoolbook.Acceptance;

/// <summary>Users' templates that are hostile or broken are flagged with their place, and yesterday's papers stay.</summary>
public sealed class HostileTemplateTests : IDisposable
{
    readonly Bench _bench = new();

    public HostileTemplateTests()
    {
        Directory.CreateDirectory(_bench.PathOf("papers"));
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(_bench.PathOf("papers/lab-order.html"), "yesterday's");
        File.WriteAllText(_bench.PathOf("secret.html"), "<p>secret</p>");
        File.WriteAllText(_bench.PathOf("secret.css"), "p { color: red }");
    }

    public void Dispose() => _bench.Dispose();

    /// <summary>A production of one roll: these tests are about the templates.</summary>
    static string OneRoll => Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/productions/hand-held-one-roll/sunday.yaml");

    [Fact]
    public void Each_hostile_template_is_flagged_with_file_line_and_column_and_nothing_is_written()
    {
        File.CreateSymbolicLink(_bench.PathOf("own/link.html"), _bench.PathOf("secret.html"));
        File.CreateSymbolicLink(_bench.PathOf("own/kit.html"), "../secret.html");
        File.WriteAllText(_bench.PathOf("own/long.html"), new string(' ', 4_000_001));
        Own("lab-order.html", "{{ while true }}{{ end }}");
        Own("can-labels.html", "{{ include '../secret.html' }}");
        Own("camera-report.html", "{{ include 'link.html' }}");
        Own("exposure-card.html", "{{ date.now }} {{ include 'long.html' }}");
        Own("wrap-summary.html", "<p onclick=\"alert(1)\">x</p><script>alert(1)</script>");

        var told = Refused();

        Assert.Contains(
            "own/lab-order.html:2:4: error: The template cannot be printed: 'while' is not allowed",
            told,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "own/can-labels.html:2:4: error: The template cannot be printed: '../secret.html' is not the plain name",
            told,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "own/camera-report.html:2:4: error: The template cannot be printed: 'link.html' is a link that points outside the "
                + "templates folder",
            told,
            StringComparison.Ordinal
        );
        Assert.Contains("own/exposure-card.html:2:4: error", told, StringComparison.Ordinal);
        Assert.Contains(
            "own/wrap-summary.html:2:2: error: The template cannot be printed: <p> has no attribute 'onclick'",
            told,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "own/wrap-summary.html:2:29: error: The template cannot be printed: <script> is not in the vocabulary",
            told,
            StringComparison.Ordinal
        );
        // The page's template is the house's; the part that it includes is not.
        Assert.Matches(@"templates/index\.html:\d+:\d+: error: The template cannot be printed: 'kit\.html' is a link", told);
        Assert.DoesNotContain("<p>secret", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_within_the_folder_and_a_folder_that_is_a_link_are_nothing_hostile()
    {
        File.WriteAllText(_bench.PathOf("own/ours.html"), "<article><p>ours</p></article>");
        File.CreateSymbolicLink(_bench.PathOf("own/lab-order.html"), "ours.html");
        Directory.CreateSymbolicLink(_bench.PathOf("linked"), _bench.PathOf("own"));

        Assert.Equal(0, _bench.Run("make", OneRoll, "--out", "papers", "--templates", "linked").Status);
        Assert.Contains("<p>ours</p>", File.ReadAllText(_bench.PathOf("papers/lab-order.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lab-order.html", "\u202e", "own/lab-order.html:3:4: error: The template cannot be printed: it holds U+202E")]
    [InlineData("lab-order.html", "\u0007", "own/lab-order.html:3:4: error: The template cannot be printed: it holds U+0007")]
    public void A_character_that_no_editor_shows_is_refused_where_it_is(string template, string character, string told)
    {
        Own(template, $"<p>one</p>\n<p>{character}two</p>");

        Assert.Contains(told, Refused(), StringComparison.Ordinal);
    }

    [Fact]
    public void Elements_inside_one_another_without_end_are_refused_by_their_number()
    {
        Own("lab-order.html", string.Concat(Enumerable.Repeat("<div>", 5_000)) + string.Concat(Enumerable.Repeat("</div>", 5_000)));

        Assert.Contains("The template cannot be printed: elements are nested more than 40 deep", Refused(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_style_sheet_that_breaks_out_or_fetches_is_flagged_too()
    {
        File.WriteAllText(
            _bench.PathOf("own/style.css"),
            "p { margin: 0 }\n  </style><script>alert(1)</script>\n@IMPORT 'x.css';\np { background: url(x.png) }"
        );

        var told = Refused();

        Assert.Contains("own/style.css:2:3: error: The template cannot be printed: '<' in a style sheet", told, StringComparison.Ordinal);
        Assert.Contains(
            "own/style.css:3:1: error: The template cannot be printed: '@IMPORT' fetches a file",
            told,
            StringComparison.Ordinal
        );
        Assert.Contains("own/style.css:4:17: error: The template cannot be printed: 'url(' fetches a file", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_style_sheet_that_is_a_link_out_of_the_folder_is_not_read()
    {
        File.CreateSymbolicLink(_bench.PathOf("own/style.css"), _bench.PathOf("secret.css"));

        Assert.Contains(
            "own/style.css:1:1: error: The template cannot be printed: is a link that points outside the templates folder",
            Refused(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_page_itself_forbids_scripts_and_fetching()
    {
        _bench.Run("make", OneRoll, "--out", "papers");

        // A page that somebody put there is kept beside ours, as it was.
        var pages = Directory.GetFiles(_bench.PathOf("papers"), "*.html");
        var ours = pages.Where(page => !page.Contains("changed-by-hand", StringComparison.Ordinal));
        Assert.All(ours, page =>
            Assert.Contains(
                "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ",
                File.ReadAllText(page),
                StringComparison.Ordinal
            )
        );
    }

    void Own(string name, string line) => File.WriteAllText(_bench.PathOf("own/" + name), "<article>\n" + line + "\n</article>");

    string Refused()
    {
        var (status, printed, error) = _bench.Run("make", OneRoll, "--out", "papers", "--templates", "own");

        Assert.Equal(1, status);
        Assert.Contains("No paper was written", error, StringComparison.Ordinal);
        Assert.Equal(["lab-order.html"], Directory.GetFiles(_bench.PathOf("papers")).Select(Path.GetFileName));
        Assert.Equal("yesterday's", File.ReadAllText(_bench.PathOf("papers/lab-order.html")));
        return printed;
    }
}
