using System.Text.Json;
using System.Text.RegularExpressions;
using Spoolbook.Film;
using Spoolbook.Printing;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Tests;

/// <summary>Where everything is, at a glance.</summary>
public sealed class StatusTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    public static TheoryData<string> Productions => [Repository.Sample, .. TestFolders.NamesIn(TestFolders.Clean).Select(In)];

    [Theory]
    [MemberData(nameof(Productions))]
    public void A_line_is_never_wider_than_the_screen(string production)
    {
        foreach (var width in (int[])[40, 60, 80, 100])
        {
            var (status, said, error) = _bench.RunAt(width, colour: false, "status", production);
            Assert.Equal((0, ""), (status, error));
            Assert.All(said.Split('\n'), line => Assert.True(line.Length <= width, $"{width}: {line}"));
        }
    }

    [Theory]
    [MemberData(nameof(Productions))]
    public void Colour_changes_no_character_and_no_bar(string production)
    {
        var plain = _bench.RunAt(80, colour: false, "status", production).Out;
        var painted = _bench.RunAt(80, colour: true, "status", production).Out;

        Assert.DoesNotContain('\u001b', plain);
        Assert.Contains('\u001b', painted);
        Assert.Equal(plain, Regex.Replace(painted, "\u001b\\[[0-9;]*m", ""));
    }

    [Fact]
    public void The_figures_are_those_of_the_books()
    {
        var books = BooksOf(Repository.Sample);
        using var json = JsonDocument.Parse(_bench.Run("status", Repository.Sample, "--format", "json").Out);
        var root = json.RootElement;

        Assert.Equal(books.Shoot.Total.Good.Frames, root.GetProperty("total").GetProperty("good").GetInt64());
        Assert.Equal(
            books.Shoot.Counted.Select(r => TallyOf(r.Tally)),
            root.GetProperty("rolls").EnumerateArray().Select(roll => TallyOf(roll))
        );
        Assert.Equal(books.Stock.Left.Frames, root.GetProperty("stock").EnumerateArray().Sum(k => k.GetProperty("left").GetInt64()));
        Assert.Equal(
            books.Coverage.Left!.Value.Select(s => s.Name),
            root.GetProperty("shots").GetProperty("left").EnumerateArray().Select(s => s.GetString())
        );
    }

    [Fact]
    public void Film_in_the_camera_is_named_with_what_is_left_of_it()
    {
        var production = _bench.PathOf("sunday.yaml");
        string[] after = ["run-off:", "unload:"];
        File.WriteAllLines(production, File.ReadLines(In("hand-held-one-roll")).Where(line => !after.Any(line.Contains)));
        var books = BooksOf(production);

        var loaded = Assert.Single(books.Cameras.Cameras);
        Assert.Equal(("B", "1"), (loaded.Body, loaded.Roll?.Name.Value));
        Assert.Equal(books.Stock.Counted.Sum(l => l.InCamera.Frames), loaded.Left!.Value.Frames);
        var left = loaded.Left.Value.FeetAndFrames(books.Production.Gauge);
        var said = _bench.Run("status", production).Out;
        Assert.Contains($"  B  1, {left} of 100+00 ft left\n", said, StringComparison.Ordinal);
        Assert.Contains($": {left} ft = {left} in the camera\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_production_that_has_only_begun_says_so()
    {
        Directory.CreateDirectory(_bench.PathOf("empty"));
        File.WriteAllText(_bench.PathOf("empty/production.yaml"), "spoolbook: 1\ntitle: Nothing yet\ncode: NO\n");

        Assert.Equal(
            (0, "NO  Nothing yet\nNothing exposed yet.\n\nCheck: no errors, no warnings, no notes.\n", ""),
            _bench.RunIn("empty", "status")
        );
    }

    [Fact]
    public void Where_nothing_can_be_read_the_findings_are_the_answer()
    {
        Directory.CreateDirectory(_bench.PathOf("none"));

        var (status, said, _) = _bench.Run("status", "none");

        Assert.Equal(1, status);
        Assert.Contains("[sheet/", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0, 0, 0, 4000, "..........")]
    [InlineData(4000, 0, 0, 0, 0, "GGGGGGGGGG")]
    [InlineData(2000, 1, 1000, 1, 998, "GGGGHNNW..")]
    [InlineData(1000, 0, 0, 1000, 0, "GGWWW     ")]
    public void Every_account_that_has_film_has_a_letter(long good, long hold, long noGood, long waste, long left, string bar)
    {
        var tally = Tally
            .Empty.With(Shoot.Strips.Account.Good, null, new Footage(good))
            .With(Shoot.Strips.Account.Hold, null, new Footage(hold))
            .With(Shoot.Strips.Account.NoGood, null, new Footage(noGood))
            .With(Shoot.Strips.Account.Waste, Shoot.Strips.WasteCause.Test, new Footage(waste))
            .With(Shoot.Strips.Account.ShortEnd, null, new Footage(left));

        var drawn = FilmBar.Of(tally, new Footage(4000), 10, new Ink(false));

        Assert.Equal(10, drawn.Length);
        Assert.Equal(bar.Distinct().Order(), drawn.Distinct().Order());
        Assert.Equal(bar.TrimEnd().Length, drawn.TrimEnd().Length);
    }

    static string In(string clean) => TestFolders.ProductionIn(Path.Combine(TestFolders.Clean, clean));

    static Books BooksOf(string production) => Books.Of(ProductionReader.Read(new FolderFiles(production)).Production!);

    static (long, long, long, long, long) TallyOf(Tally tally) =>
        (tally.Good.Frames, tally.Hold.Frames, tally.NoGood.Frames, tally.Waste.Frames, tally.ShortEnd.Frames);

    static (long, long, long, long, long) TallyOf(JsonElement roll) =>
        (Frames(roll, "good"), Frames(roll, "hold"), Frames(roll, "ng"), Frames(roll, "waste"), Frames(roll, "left"));

    static long Frames(JsonElement roll, string name) => roll.GetProperty(name).GetInt64();
}
