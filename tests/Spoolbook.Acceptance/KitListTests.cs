using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>The kit list: everything that must go back, and what to do with it first.</summary>
public sealed partial class KitListTests(MadeSample sample) : IClassFixture<MadeSample>, IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Every_piece_of_the_kit_is_on_the_list_and_whatever_there_is_to_say_of_it_on_the_wrap_summary()
    {
        var list = sample.WordsOf("kit-list");
        var wrap = sample.WordsOf("wrap-summary");
        var pieces = Piece()
            .Matches(File.ReadAllText(Path.Combine(Repository.Sample, "kit.yaml")))
            .Select(m => m.Groups[1].Value.Trim('"'))
            .ToList();

        Assert.Equal(18, pieces.Count);
        Assert.All(pieces, piece => Assert.Contains(piece, list, StringComparison.Ordinal));
        Assert.Contains("18 other pieces, nothing to note: see the kit list.", wrap, StringComparison.Ordinal);
        Assert.DoesNotContain("Rewind key", wrap, StringComparison.Ordinal);
        foreach (
            var said in new[]
            {
                "Lens caps: 3 went out, 2 came back.",
                "went out: Scratch by the turret; came back: The same, and salt in the handle; spring run down",
            }
        )
        {
            Assert.Contains(said, list, StringComparison.Ordinal);
            Assert.Contains(said, wrap, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_piece_that_is_not_counted_back_with_the_others_is_on_the_wrap_summary()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(production, "kit.yaml");
        var kit = File.ReadAllText(file);
        var counted = Regex.Match(kit, @"\{item: Changing bag[^}\n]*\}").Value;
        Assert.Contains("back: 1", counted, StringComparison.Ordinal);
        File.WriteAllText(file, kit.Replace(counted, Regex.Replace(counted, ", back: 1", ""), StringComparison.Ordinal));
        _bench.Run("make", production, "--out", "papers");
        var wrap = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/wrap-summary.pdf")));

        Assert.Contains("Changing bag 1 ", wrap, StringComparison.Ordinal);
        Assert.Contains("17 other pieces, nothing to note", wrap, StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_says_whose_the_kit_is_who_has_it_what_it_is_worth_and_when_it_is_due()
    {
        var list = sample.WordsOf("kit-list");

        foreach (
            var said in new[]
            {
                "23 pieces",
                "Inês Okonjo-Varga",
                "Tue 6 Oct 2026",
                "3700.00 EUR",
                "SW-1187 · on the turret: 25mm, 10mm, 75mm · single-perf sprockets · Case 1, top · worth 2400.00 EUR",
                "Marit's own: Filters",
                "white dot on each",
                "Leave the case open overnight",
            }
        )
        {
            Assert.Contains(said, list, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_camera_with_a_roll_in_it_must_not_be_put_away()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var roll = Path.Combine(production, "rolls", "r03.yaml");
        File.WriteAllText(roll, Regex.Replace(File.ReadAllText(roll), "^unload:.*\n", "", RegexOptions.Multiline));
        Bench.LeaveOutOfTheBox(production, "R03");
        Make(production);
        var list = Printed("kit-list");

        Assert.Contains("Unload roll R03, which is still in the camera", list, StringComparison.Ordinal);
        Assert.Contains("roll R03 is still in it", list, StringComparison.Ordinal);
        Assert.DoesNotContain("No film left in the camera", list, StringComparison.Ordinal);
    }

    [Fact]
    public void The_care_steps_are_those_that_the_kit_has_need_of()
    {
        Kit("spoolbook: 1\nlenses: [{lens: 25mm}]\n");
        var list = Printed("kit-list");

        Assert.Contains("Cap every lens", list, StringComparison.Ordinal);
        Assert.DoesNotContain("spring", list, StringComparison.Ordinal);
        Assert.DoesNotContain("battery off the motor", list, StringComparison.Ordinal);
        Assert.DoesNotContain("take-up", list, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_kit_was_borrowed_there_is_no_list_of_it()
    {
        Kit("spoolbook: 1\n");

        Assert.False(File.Exists(_bench.PathOf("papers/kit-list.pdf")));
        Assert.DoesNotContain("kit-list", File.ReadAllText(_bench.PathOf("papers/index.html")), StringComparison.Ordinal);
    }

    void Kit(string kit)
    {
        Directory.CreateDirectory(_bench.PathOf("small"));
        File.WriteAllText(_bench.PathOf("small/kit.yaml"), kit);
        File.WriteAllText(_bench.PathOf("small/production.yaml"), "spoolbook: 1\ntitle: Small\ncode: SMALL\n");
        Make(_bench.PathOf("small"));
    }

    void Make(string production) => Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);

    string Printed(string paper) => PageText.Of(_bench.PathOf($"papers/{paper}.html"));

    [GeneratedRegex(@"- *\{?(?:body|lens|filter|meter|motor|item): ([^,\n}]+)")]
    private static partial Regex Piece();
}
