using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>Every figure on a school's page is one of a production's own papers, or the sum of theirs.</summary>
public sealed partial class TermFiguresTests : IDisposable
{
    const string Dash = "–";

    // Lengths that come out uneven in metres.
    static readonly (string Name, string To)[] _productions =
    [
        ("first-year/ferry", "12+13"),
        ("first-year/kite", "12+21"),
        ("second-year/goat", "11+07"),
        ("second-year/moth", "11+38"),
    ];

    static readonly string[] _causes = ["head", "tail", "gap", "run-off", "fog", "test", "end"];

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Film_and_waste_in_feet_are_those_of_the_ledgers_and_their_sums()
    {
        var term = Made("");
        var ledgers = Ledgers(term);

        Assert.Equal(
            [
                .. ledgers.Select(l =>
                    (string[])
                        [
                            l.Name,
                            Text(l.Rolls),
                            Text(l.Takes),
                            Feet(l.Film("exposed")),
                            Feet(l.Film("good")),
                            ToOne(l.Film("exposed"), l.Film("good")),
                            Percent(l.Film("waste"), l.Film("exposed")),
                        ]
                ),
                [
                    "All 16mm",
                    Text(ledgers.Sum(l => l.Rolls)),
                    Text(ledgers.Sum(l => l.Takes)),
                    Feet(Sum("exposed")),
                    Feet(Sum("good")),
                    ToOne(Sum("exposed"), Sum("good")),
                    Percent(Sum("waste"), Sum("exposed")),
                ],
            ],
            Rows(term, "film")
        );
        var causes = _causes.Where(c => ledgers.Any(l => l.Waste(c) > 0)).ToList();
        Assert.Equal(
            [
                .. ledgers.Select(l => (string[])[l.Name, .. causes.Select(c => Feet(l.Waste(c))), Feet(l.Film("waste"))]),
                ["All 16mm", .. causes.Select(c => Feet(ledgers.Sum(l => l.Waste(c)))), Feet(Sum("waste"))],
            ],
            Rows(term, "waste")
        );

        long Sum(string account) => ledgers.Sum(l => l.Film(account));
    }

    [Fact]
    public void Metres_add_up_as_they_are_printed_along_a_row_and_down_a_column()
    {
        var term = Made("units: metres\n");
        foreach (var (id, from) in ((string, int)[])[("film", 3), ("waste", 1)])
        {
            var rows = Rows(term, id);
            for (var at = from; at < (id == "film" ? 5 : rows[0].Length); at++)
            {
                Assert.Equal(Metres(rows[^1][at]), rows.SkipLast(1).Sum(r => Metres(r[at])));
            }
        }

        Assert.All(Rows(term, "waste"), row => Assert.Equal(Metres(row[^1]), row[1..^1].Sum(Metres)));
    }

    [Fact]
    public void Stock_on_the_shelf_and_in_productions_is_what_was_bought_less_what_was_exposed()
    {
        var term = Made("");
        var ledgers = Ledgers(term);
        var row = Assert.Single(Rows(term, "stock"));
        var (came, left) = (ledgers.Sum(l => l.Lot("came") - l.Lot("sent-away")), ledgers.Sum(l => l.Lot("left")));
        const long bought = 12 * 4000;

        Assert.Equal(["Colour negative 250 D", Feet(bought - came), Feet(left), Feet(ledgers.Sum(l => l.Lacking)), Dash], row);
        Assert.Equal(bought, bought - came + left + ledgers.Sum(l => l.Lot("exposed")));
    }

    [Fact]
    public void Errors_shots_and_money_are_those_that_check_status_and_ledger_give_for_each_production()
    {
        var term = Made("");
        var rows = Rows(term, "help").ToDictionary(r => r[0]);
        foreach (var ledger in Ledgers(term))
        {
            var folder = Path.Combine(term, ledger.Name);
            using var check = JsonDocument.Parse(_bench.Run("check", folder, "--format", "json").Out);
            using var status = JsonDocument.Parse(_bench.Run("status", folder, "--format", "json").Out);
            var counts = check.RootElement.GetProperty("counts");
            var shots = status.RootElement.GetProperty("shots");
            var got = shots.GetProperty("got").GetArrayLength();
            var left = shots.GetProperty("left").GetArrayLength();
            Assert.Equal(
                [
                    Text(counts.GetProperty("errors").GetInt32()),
                    Text(counts.GetProperty("warnings").GetInt32()),
                    $"{got} / 3",
                    $"{Money(ledger.Cost)} EUR",
                    $"{Money(900 - ledger.Cost)} EUR",
                ],
                rows[ledger.Name][2..]
            );
            Assert.Equal(3, got + left);
        }
    }

    [Fact]
    public void What_goes_wrong_most_is_counted_over_the_findings_of_all_productions()
    {
        var term = Made("");
        var found = _productions
            .SelectMany(p =>
            {
                using var check = JsonDocument.Parse(_bench.Run("check", Path.Combine(term, p.Name), "--format", "json").Out);
                return check
                    .RootElement.GetProperty("findings")
                    .EnumerateArray()
                    .Select(f => (Check: f.GetProperty("check").GetString()!, p.Name))
                    .ToList();
            })
            .ToList();

        Assert.NotEmpty(found);
        Assert.Equal(
            found.GroupBy(f => f.Check).Select(g => (g.Key, Text(g.Count()), Text(g.Select(f => f.Name).Distinct().Count()))).Order(),
            Rows(term, "findings").Select(r => (r[0], r[1], r[2])).Order()
        );
    }

    [Fact]
    public void A_roll_that_was_sent_is_at_the_lab_once()
    {
        var sent = Assert.Single(Rows(Made(""), "lab"));

        Assert.Equal(["first-year/ferry", "Mon 5 Oct 2026", "2", "R01, R02"], sent);
    }

    // One production shot something that is not on its list, and sent both of its rolls.
    string Made(string school)
    {
        var term = _bench.CopyOf(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "department"), "term");
        Rewrite(Path.Combine(term, "school.yaml"), "spoolbook: 1\n", "spoolbook: 1\n" + school);
        foreach (var (name, to) in _productions)
        {
            Rewrite(Path.Combine(term, name, "rolls", "r01.yaml"), "to: 12+00", "to: " + to);
        }

        var ferry = Path.Combine(term, "first-year/ferry/rolls");
        Rewrite(Path.Combine(ferry, "r01.yaml"), "shot: B, take: 1", "shot: X, take: 1");
        foreach (var roll in (string[])["r01.yaml", "r02.yaml"])
        {
            Rewrite(Path.Combine(ferry, roll), "push: 0}", "push: 0, sent: 2026-10-05}");
        }

        var (status, printed, error) = _bench.Run("make", "term");
        Assert.True(status == 0, printed + error);
        return term;
    }

    static void Rewrite(string file, string old, string text)
    {
        var was = File.ReadAllText(file);
        Assert.Contains(old, was, StringComparison.Ordinal);
        File.WriteAllText(file, was.Replace(old, text, StringComparison.Ordinal));
    }

    static List<Ledger> Ledgers(string term) =>
        [
            .. _productions.Select(p =>
            {
                using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(term, p.Name, "papers", "ledger.json")));
                return new Ledger(p.Name, json.RootElement.Clone());
            }),
        ];

    // The texts of a table's cells, row by row.
    static List<string[]> Rows(string term, string id)
    {
        var page = File.ReadAllText(Path.Combine(term, "papers", "index.html"));
        var from = page.IndexOf($"<section id=\"{id}\"", StringComparison.Ordinal);
        var table = page[from..page.IndexOf("</section>", from, StringComparison.Ordinal)];
        var body = table[table.IndexOf("<tbody>", StringComparison.Ordinal)..];
        return
        [
            .. Row().Matches(body).Select(row => Cell().Matches(row.Value).Select(c => Tag().Replace(c.Groups[1].Value, "")).ToArray()),
        ];
    }

    // 16 mm film has 40 frames to the foot.
    static string Feet(long frames) => frames == 0 ? Dash : string.Create(CultureInfo.InvariantCulture, $"{frames / 40}+{frames % 40:00}");

    static decimal Metres(string text) => text == Dash ? 0 : decimal.Parse(text, CultureInfo.InvariantCulture);

    static string ToOne(long frames, long to) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round((decimal)frames / to, 1, MidpointRounding.AwayFromZero):0.0} : 1");

    static string Percent(long part, long of) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(100m * part / of, MidpointRounding.AwayFromZero):0}\u00A0%");

    static string Money(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);

    static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    sealed record Ledger(string Name, JsonElement Root)
    {
        public int Rolls => Root.GetProperty("rolls").GetArrayLength();

        public int Takes => Root.GetProperty("total").GetProperty("takes").GetInt32();

        public decimal Cost => Root.GetProperty("cost").GetProperty("to-date").GetDecimal();

        public long Lacking =>
            Root.GetProperty("forecast").GetProperty("plain-lacking") is { ValueKind: JsonValueKind.Object } film ? Frames(film) : 0;

        public long Film(string account) => Frames(Root.GetProperty("total").GetProperty("film").GetProperty(account));

        public long Waste(string cause) => Frames(Root.GetProperty("total").GetProperty("film").GetProperty("waste-by").GetProperty(cause));

        public long Lot(string account) =>
            Root.GetProperty("stock").GetProperty("lots").EnumerateArray().Sum(lot => Frames(lot.GetProperty(account)));

        static long Frames(JsonElement film) => film.GetProperty("frames").GetInt64();
    }

    [GeneratedRegex("<tr.*?</tr>", RegexOptions.Singleline)]
    private static partial Regex Row();

    [GeneratedRegex("<t[hd][^>]*>(.*?)</t[hd]>", RegexOptions.Singleline)]
    private static partial Regex Cell();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();
}
