using System.Text.RegularExpressions;
using Spoolbook.Entry;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Workbook;
using Spoolbook.Reading;
using Spoolbook.Reading.Editing;
using Spoolbook.Reading.Files;

namespace Spoolbook.Acceptance;

/// <summary>The same things of a take have the same names everywhere, and come in one order.</summary>
public sealed partial class TakePartTests(MadeSample sample) : IClassFixture<MadeSample>
{
    const int MostColumns = 17;

    static readonly string[] _languages = ["en", "de"];

    static readonly string[] _columns =
    [
        "slate",
        "from",
        "to",
        "length",
        "speed",
        "lens",
        "stop",
        "meter",
        "filter",
        "focus",
        "mark",
        "time",
        "remarks",
    ];

    [Fact]
    public void The_roll_file_has_them_in_that_order() =>
        AssertOrder(EntryTables.Take.Keys.Select(k => k.Name), TakePart.All.Select(p => p.Key));

    [Theory]
    [InlineData("log-sheets")]
    [InlineData("camera-report-R04")]
    public void The_papers_have_their_columns_in_that_order_and_the_mark_beside_the_slate(string paper)
    {
        var table = File.ReadAllText(sample.PathOf(paper + ".html"));
        var heads = Head().Matches(table).Select(m => m.Groups[1].Value).SkipWhile(h => h != "Slate").Take(MostColumns).ToList();

        Assert.Equal("Mark", heads[1]);
        heads.RemoveAt(1);
        AssertOrder(heads.TakeWhile(h => h != "No."), TakePart.All.Select(p => p.Column).Distinct());
    }

    [Fact]
    public void The_workbook_and_a_table_have_their_columns_in_that_order_and_the_mark_beside_the_take()
    {
        var production = ProductionReader.Read(new FolderFiles(Repository.Sample)).Production!;
        var heads = TakesVocabulary.Of(production, new HouseTemplates()).Heads.Select(h => h.House).Distinct().ToList();

        Assert.Equal(heads.IndexOf("Take") + 1, heads.IndexOf("Mark"));
        heads.Remove("Mark");
        AssertOrder(heads, TakePart.All.Where(p => p.Key != "mark").Select(p => p.Head));
    }

    [Fact]
    public void The_pocket_log_has_its_buttons_in_that_order()
    {
        var script = File.ReadAllText(Path.Combine(Repository.Root, "templates", "pocket-log.js"));
        var chips = script[script.IndexOf("const chips = [", StringComparison.Ordinal)..];
        var said = Words("en");

        AssertOrder(
            Chip().Matches(chips[..chips.IndexOf("];", StringComparison.Ordinal)]).Select(m => said["pocket-" + m.Groups[1].Value]),
            TakePart.All.Select(p => p.Button)
        );
    }

    [Fact]
    public void What_one_place_calls_it_the_others_call_it_in_each_language()
    {
        var english = Words("en");
        foreach (var language in _languages)
        {
            var words = Words(language);
            foreach (var part in TakePart.All)
            {
                string?[] names =
                [
                    .. Called(part.Column, "").Where(_ => part.Column == (part.Button ?? part.Head)),
                    .. Called(part.Head, "book.head."),
                    .. Called(part.Button, "pocket-"),
                ];
                Assert.True(names.Distinct().Count() <= 1, $"{language} {part.Key}: {string.Join(", ", names)}");
            }

            // In the language, what is called so in English.
            IEnumerable<string> Called(string? name, string start) =>
                name is null ? []
                : english.Where(w => IsOf(w.Key, start) && w.Value == name).Select(w => words[w.Key]).ToList() is [_, ..] found ? found
                : throw new InvalidOperationException($"Nothing that begins with '{start}' is called {name}.");
        }
    }

    // Words of other things may be the same in English.
    static bool IsOf(string key, string start) =>
        start.Length == 0
            ? _columns.Contains(key)
            : key.StartsWith(start, StringComparison.Ordinal) && !key[start.Length..].Contains('.', StringComparison.Ordinal);

    static Dictionary<string, string> Words(string language) =>
        File.ReadLines(Path.Combine(Repository.Root, "templates", $"words.{language}.txt"))
            .Select(line => line.Split(" = ", 2))
            .Where(parts => parts.Length == 2 && parts[0][0] != '#')
            .ToDictionary(parts => parts[0], parts => parts[1], StringComparer.Ordinal);

    static void AssertOrder(IEnumerable<string> place, IEnumerable<string?> list)
    {
        var order = list.Where(name => name is not null).ToList();
        var found = place.Where(order.Contains).ToList();
        Assert.True(found.Count > 5, string.Join(", ", found));
        Assert.Equal(found.OrderBy(order.IndexOf), found);
    }

    [GeneratedRegex("<th[^>]*>([^<]+)</th>")]
    private static partial Regex Head();

    [GeneratedRegex("this\\.chip\\(w\\.pocket_(\\w+),")]
    private static partial Regex Chip();
}
