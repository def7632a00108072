namespace Spoolbook.Acceptance;

/// <summary>Files that are none, that lead nowhere, or that are made to keep whoever reads them busy: each is said in a sentence.</summary>
public sealed class HostileFileTests : IDisposable
{
    readonly Bench _bench = new();

    public HostileFileTests() => Directory.CreateDirectory(_bench.PathOf("own"));

    public void Dispose() => _bench.Dispose();

    static string OneRoll => Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/productions/hand-held-one-roll/sunday.yaml");

    [Theory]
    [InlineData("lab-order.html", "The template cannot be printed: cannot be opened")]
    [InlineData("style.css", "The template cannot be printed: cannot be opened")]
    [InlineData("words.en.txt", "The words file cannot be opened")]
    public void A_circle_of_links_among_the_templates_is_said_with_its_name(string name, string told)
    {
        File.CreateSymbolicLink(_bench.PathOf("own/other"), name);
        File.CreateSymbolicLink(_bench.PathOf("own/" + name), "other");

        Refused($"own/{name}:1:1: error: {told}", "--templates", "own");
    }

    [Fact]
    public void A_file_in_place_of_the_templates_folder_is_wrong_use()
    {
        File.WriteAllText(_bench.PathOf("lab-order.html"), "");

        var (status, _, error) = _bench.Run("make", OneRoll, "--out", "papers", "--templates", "lab-order.html");

        Assert.Equal(2, status);
        Assert.StartsWith("spoolbook: 'lab-order.html' is a file, and --templates wants the folder", error, StringComparison.Ordinal);
    }

    [ToolTheory("mkfifo")]
    [InlineData("lab-order.html", "The template cannot be printed: is a pipe, not a file")]
    [InlineData("words.en.txt", "The words file is a pipe, not a file")]
    public void A_pipe_among_the_templates_is_not_waited_for(string name, string told)
    {
        Pipe("own/" + name);

        Refused($"own/{name}:1:1: error: {told}", "--templates", "own");
    }

    [ToolTheory("mkfifo")]
    [InlineData("rolls/r01.yaml", "rolls/r01.yaml:1:1: error: This is a pipe where a file should be.")]
    [InlineData("school.svg", "The logo `school.svg` is a pipe.")]
    public void A_pipe_in_the_production_is_not_waited_for(string name, string told)
    {
        _bench.CopyOf(Repository.Sample);
        File.Delete(_bench.PathOf("production/" + name));
        Pipe("production/" + name);

        var (status, said, _) = _bench.Run("check", "production");

        Assert.Equal(1, status);
        Assert.Contains(told, said, StringComparison.Ordinal);
    }

    [ToolFact("mkfifo")]
    public void A_link_to_a_pipe_or_a_device_is_what_it_leads_to()
    {
        Pipe("pipe");
        _bench.CopyOf(Repository.Sample);
        File.Delete(_bench.PathOf("production/rolls/r01.yaml"));
        File.CreateSymbolicLink(_bench.PathOf("production/rolls/r01.yaml"), _bench.PathOf("pipe"));
        File.Delete(_bench.PathOf("production/kit.yaml"));
        File.CreateSymbolicLink(_bench.PathOf("production/kit.yaml"), "/dev/zero");

        var said = _bench.Run("check", "production").Out;

        Assert.Contains("rolls/r01.yaml:1:1: error: This is a pipe where", said, StringComparison.Ordinal);
        Assert.Contains("kit.yaml:1:1: error: This is a device where", said, StringComparison.Ordinal);
    }

    [ToolFact("mkfifo")]
    public void A_pipe_in_place_of_a_table_is_wrong_use()
    {
        Pipe("takes.csv");

        var (status, _, error) = _bench.Run("import", "takes.csv", Repository.Sample);

        Assert.Equal((2, "spoolbook: 'takes.csv' is a pipe and no file.\n"), (status, error));
    }

    [Fact]
    public void An_empty_file_is_still_an_empty_file()
    {
        _bench.CopyOf(Repository.Sample);
        File.WriteAllText(_bench.PathOf("production/kit.yaml"), "");

        Assert.Contains("This file is empty", _bench.Run("check", "production").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_logo_of_groups_within_groups_is_refused_by_their_number()
    {
        School(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">"
                + string.Concat(Enumerable.Repeat("<g>", 14_000))
                + string.Concat(Enumerable.Repeat("</g>", 14_000))
                + "</svg>"
        );

        Refused("error: The logo logo.svg cannot be drawn: the elements of a figure are nested more than 40 deep");
    }

    [Fact]
    public void A_words_file_of_many_lines_is_refused_by_their_number()
    {
        File.WriteAllLines(_bench.PathOf("own/words.en.txt"), Enumerable.Range(0, 3_001).Select(n => $"nothing-{n % 10} = x"));

        Refused("own/words.en.txt:3001:1: error: The words file has 3002 lines, but at most 3000 are read", "--templates", "own");
    }

    [Fact]
    public void A_line_of_words_that_fills_pages_is_refused_by_its_length()
    {
        File.WriteAllText(_bench.PathOf("own/words.en.txt"), "camera-report = " + string.Concat(Enumerable.Repeat("word word ", 32_000)));

        Refused("own/words.en.txt:1:1: error: This line has 320016 characters, but at most 2000 are read", "--templates", "own");
    }

    [Fact]
    public void A_words_file_with_a_character_that_no_text_may_hold_is_refused()
    {
        File.WriteAllText(_bench.PathOf("own/words.en.txt"), "wrap-summary = Summary\u202e of it\n");

        Refused("own/words.en.txt:1:23: error: This line holds U+202E, a right-to-left override", "--templates", "own");
    }

    [Fact]
    public void The_longest_word_that_is_read_is_printed()
    {
        var production = _bench.PathOf("production.yaml");
        var text = File.ReadAllText(OneRoll);
        Assert.Contains("note: Steps", text, StringComparison.Ordinal);
        File.WriteAllText(production, text.Replace("note: Steps", "note: " + new string('W', 20_000), StringComparison.Ordinal));

        var (status, said, error) = _bench.Run("make", "production.yaml", "--out", "papers");

        Assert.True(status == 0, said + error);
    }

    void School(string svg)
    {
        File.WriteAllText(_bench.PathOf("logo.svg"), svg);
        File.WriteAllText(_bench.PathOf("production.yaml"), File.ReadAllText(OneRoll) + "\nschool: {logo: logo.svg}\n");
    }

    void Pipe(string name) => Assert.Equal(0, Tools.Run("mkfifo", _bench.PathOf(name)).Status);

    void Refused(string told, params string[] more)
    {
        var production = File.Exists(_bench.PathOf("production.yaml")) ? "production.yaml" : OneRoll;
        var (status, said, error) = _bench.Run(["make", production, "--out", "papers", .. more]);

        Assert.Equal(1, status);
        Assert.Contains(told, said, StringComparison.Ordinal);
        Assert.StartsWith("No paper was written", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said + error, StringComparison.Ordinal);
    }
}
