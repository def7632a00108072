using System.Text.Json;
using System.Text.RegularExpressions;
using Spoolbook.Beginning;
using Spoolbook.Entry;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Acceptance;

/// <summary>How a production begins.</summary>
public sealed partial class NewCommandTests : IDisposable
{
    static readonly (string Name, string[] Words)[] _options =
    [
        ("title", ["--title", "Café \"Zur Post\": a film #2"]),
        ("code", ["--code", "POST-2"]),
        ("settings", ["--gauge", "Super 16", "--project-at", "25", "--paper", "letter", "--first-day", "2026-12-01"]),
        (
            "lots",
            [
                "--lot",
                "N250-A: Colour negative 250 D, 250, daylight, ecn-2, 100ft, 6",
                "--lot",
                "Black-and-white reversal 200, 2 cans, EI 200, none, 30m, bw-reversal, 1R, 2027-06",
            ]
        ),
        (
            "kit",
            [
                "--body",
                "C1: Spring-wound reflex, speeds 12 16 24 25 32 48, shutter 133, wind 18ft, takes 100ft, finder 20%, serial 10437",
                "--lens",
                "12mm 1.6-22 1ft air, 50mm",
                "--lens",
                "Zoom 2.2-22 4ft",
            ]
        ),
        ("people", ["--person", "Kim Bell, Director", "--person", "kit: Ada Example, Camera assistant"]),
        ("lab", ["--lab", "Harbour Film Lab, 3 Dock Road, Port Example"]),
        ("shots", ["--shots", "shots.csv"]),
        ("from", ["--from", "earlier"]),
    ];

    readonly Bench _bench = new();

    public NewCommandTests()
    {
        File.WriteAllText(
            _bench.PathOf("shots.csv"),
            "Scene;Shot;Description;Seconds;Light\n1;A;\"The pans; wide, {still}\";12;day\n1;b;She turns: the barrow;;\n"
                + "2A;;Needle;4s;tungsten\n"
        );
    }

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Whatever_is_known_when_a_production_begins_it_checks_clean()
    {
        var sample = new FolderFiles(Repository.Sample);
        var earlier = EarlierProduction.Of(sample, ProductionReader.Read(sample).Production!);
        var shots = ShotTable.Read("shots.csv", File.ReadAllBytes(_bench.PathOf("shots.csv"))).Shots;
        for (var which = 0; which < 1 << _options.Length; which++)
        {
            var chosen = _options.Where((_, at) => (which & (1 << at)) != 0).ToList();
            var answers = new NewAnswers { Title = "The Ferry Light", Code = "FERRY" };
            foreach (var (option, value) in chosen.SelectMany(o => o.Words.Chunk(2).Select(w => (w[0][2..], w[1]))))
            {
                answers = option switch
                {
                    "from" => answers with { From = earlier },
                    "shots" => answers with { Shots = shots },
                    _ => NewQuestions.All.Single(q => q.Option == option).Take(answers, value).Value!,
                };
            }

            var found = Pipeline.Run(new BegunFiles(BegunProduction.FilesOf(answers))).Found;
            Assert.True(
                found.Findings.All(f => f.Level == Level.Note),
                $"{string.Join(", ", chosen.Select(o => o.Name))}: {string.Join("; ", found.Findings.Select(f => f.Message))}"
            );
        }
    }

    [Fact]
    public void What_is_written_is_what_was_checked()
    {
        _bench.CopyOf(Repository.Sample, "earlier");

        var (status, said, error) = _bench.Run(["new", "all", "--yes", .. _options.SelectMany(o => o.Words)]);
        Assert.True(status == 0, said + error);
        Assert.Equal("[]", Found("all"));
        Assert.Equal(0, _bench.Run("new", "none", "--yes").Status);
        Assert.Equal("[]", Found("none"));
        Assert.Equal(0, _bench.Run("make", "all").Status);
    }

    [Fact]
    public void The_roll_that_the_new_production_shows_can_be_used_as_it_is()
    {
        _bench.CopyOf(Repository.Sample, "earlier");
        foreach (
            var options in (string[][])
                [
                    [.. _options.Take(7).SelectMany(o => o.Words)],
                    ["--from", "earlier", .. _options[3].Words],
                ]
        )
        {
            var name = $"p{options.Length}";
            _bench.Run(["new", name, "--yes", .. options]);
            var guide = File.ReadAllLines(_bench.PathOf($"{name}/rolls/how-to.txt"));
            File.WriteAllLines(
                _bench.PathOf($"{name}/rolls/r01.yaml"),
                guide.Where(l => l.StartsWith("    ", StringComparison.Ordinal)).Select(l => l[4..])
            );

            var (status, said, _) = _bench.Run("check", name);
            Assert.True(status == 0, said);
            Assert.Contains("1 roll, 1 take", said, StringComparison.Ordinal);

            // The lines of the command come to the same roll.
            File.Delete(_bench.PathOf($"{name}/rolls/r01.yaml"));
            foreach (var line in guide.Where(l => l.StartsWith("  spoolbook ", StringComparison.Ordinal)))
            {
                var words = Word().Matches(line).Select(m => m.Value.Trim('"').Replace("'", "", StringComparison.Ordinal)).Skip(1).ToList();
                var run = _bench.Run([.. words, "--in", name]);
                Assert.True(run.Status == 0, line + run.Out + run.Error);
            }

            Assert.Contains("1 roll, 1 take", _bench.Run("check", name).Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Questions_are_answered_line_by_line()
    {
        string[] answers =
        [
            "The Ferry Light",
            "",
            "",
            "25",
            "",
            "2026-12-01",
            "Colour negative 250 D, 250, daylight, ecn-2, 100ft, 6",
            "",
            "B1",
            "",
            "10mm, 25mm",
            "",
            "Leila Sands, Director",
            "Leila Moor, Camera assistant",
            "",
            "Harbour Film Lab",
        ];

        var (status, said, error) = _bench.Answer(string.Join('\n', answers), "new", "ferry");

        Assert.True(status == 0, said + error);
        var text = File.ReadAllText(_bench.PathOf("ferry/production.yaml"));
        Assert.Contains("\ncode: FERRY ", text, StringComparison.Ordinal);
        Assert.Contains("{id: leila2, name: Leila Moor, role: Camera assistant}", text, StringComparison.Ordinal);
        Assert.Contains("\ndirector: leila ", text, StringComparison.Ordinal);
        Assert.Contains("lot: C250-A ", File.ReadAllText(_bench.PathOf("ferry/stock.yaml")), StringComparison.Ordinal);
        Assert.Equal("[]", Found("ferry"));
    }

    [Fact]
    public void A_wrong_answer_is_said_and_nothing_is_written()
    {
        var (status, _, error) = _bench.Answer("A\n\n17mm\n", "new", "ferry");

        Assert.Equal(2, status);
        Assert.Contains("`17mm` is not a gauge", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.PathOf("ferry")));
    }

    [Theory]
    [InlineData("--gauge", "17mm", "not a gauge")]
    [InlineData("--first-day", "tomorrow", "2026")]
    [InlineData("--lot", "Colour negative 250 D, 250, daylight, ecn-2, 100ft", "how many cans")]
    [InlineData("--lens", "25mm, 25mm", "25mm")]
    [InlineData("--shots", "nowhere.csv", "nowhere.csv")]
    public void What_is_wrong_on_the_command_line_is_named_and_nothing_is_written(string option, string value, string said)
    {
        var (status, _, error) = _bench.Run("new", "ferry", "--yes", option, value);

        Assert.Equal(2, status);
        Assert.Contains(said, error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.PathOf("ferry")));
    }

    [Fact]
    public void A_folder_that_holds_something_is_refused()
    {
        Directory.CreateDirectory(_bench.PathOf("ferry/.hidden"));
        Assert.Equal(0, _bench.Run("new", "ferry", "--yes").Status);
        var before = File.ReadAllText(_bench.PathOf("ferry/production.yaml"));

        var (status, _, error) = _bench.Run("new", "ferry", "--yes", "--title", "Another");

        Assert.Equal(2, status);
        Assert.Contains("holds kit.yaml already", error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(_bench.PathOf("ferry/production.yaml")));
    }

    [Fact]
    public void What_happened_in_the_earlier_production_stays_there_and_its_comments_come_along()
    {
        var earlier = _bench.CopyOf(Repository.Sample, "earlier");
        var kit = Path.Combine(earlier, "kit.yaml");
        File.WriteAllText(kit, File.ReadAllText(kit).Replace("\nlenses:\n", "\n# mind the long one\nlenses:\n", StringComparison.Ordinal));

        _bench.Run("new", "next", "--yes", "--from", "earlier", "--title", "Tin for the Gull", "--code", "GULL");

        var made = File.ReadAllText(_bench.PathOf("next/kit.yaml"));
        Assert.Contains("# mind the long one\nlenses:\n", made, StringComparison.Ordinal);
        Assert.Contains(
            "- {item: Lens caps, out: 3}  # last time: back: 2, note: The 75's. Somewhere in the salt",
            made,
            StringComparison.Ordinal
        );
        Assert.Contains("# condition-back: \"The same, and salt in the handle\"  # last time", made, StringComparison.Ordinal);
        Assert.DoesNotContain("\n    back:", made, StringComparison.Ordinal);
        Assert.DoesNotContain(", back:", made, StringComparison.Ordinal);
        var production = File.ReadAllText(_bench.PathOf("next/production.yaml"));
        Assert.Contains("naming: \"GULL_R01_0000001", production, StringComparison.Ordinal);
        Assert.Contains("return-to: [\"Tin for the Gull, c/o", production, StringComparison.Ordinal);
        Assert.Contains("Reversal runs on Thursdays only.", production, StringComparison.Ordinal);
        Assert.DoesNotContain("consignments", production, StringComparison.Ordinal);
        Assert.DoesNotContain("shot: A, what: \"The pans", production, StringComparison.Ordinal);
        Assert.True(File.Exists(_bench.PathOf("next/school.svg")));
    }

    [Theory]
    [InlineData("1A The pans, wide, 12s", "{scene: 1, shot: A, what: \"The pans, wide\", screen: 12s}")]
    [InlineData("7B: Girl at the lock", "{scene: 7, shot: B, what: Girl at the lock}")]
    [InlineData("3, C, Clouds, 5 s, daylight", "{scene: 3, shot: C, what: Clouds, screen: 5s, light: daylight}")]
    [InlineData("12. The heron goes up", "{scene: 12, what: The heron goes up}")]
    [InlineData("scene,what\n4a,Window", "{scene: 4, shot: A, what: Window}")]
    public void A_shot_list_may_be_a_table_or_a_shot_a_line(string list, string line)
    {
        File.WriteAllText(_bench.PathOf("list.txt"), list);

        Assert.Equal(0, _bench.Run("new", "ferry", "--yes", "--shots", "list.txt").Status);
        Assert.Contains($"shots:\n  - {line}\n", File.ReadAllText(_bench.PathOf("ferry/production.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_without_a_slate_is_no_shot()
    {
        File.WriteAllText(_bench.PathOf("list.txt"), "1A The pans\nThe barrow\n");

        var (status, _, error) = _bench.Run("new", "ferry", "--yes", "--shots", "list.txt");

        Assert.Equal(1, status);
        Assert.StartsWith("list.txt:2: ", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.PathOf("ferry")));
    }

    [GeneratedRegex("\"[^\"]*\"|'[^']*'|[^ ]+")]
    private static partial Regex Word();

    string Found(string production)
    {
        using var json = JsonDocument.Parse(_bench.Run("check", production, "--format", "json").Out);
        return $"[{string.Join("; ", json.RootElement.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("message")))}]";
    }
}
