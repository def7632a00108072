using System.Globalization;
using CsCheck;
using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>Laws of a school's stock and kit, on generated terms.</summary>
public sealed class DepartmentLawTests
{
    static readonly string[] _productions = ["ferry", "goat"];

    // Who takes which can from whom, one move a day.
    static readonly Gen<(int Unit, int To)[]> _moves = Gen.Select(Gen.Int[1, 4], Gen.Int[0, 2]).Array[0, 12];

    [Fact]
    public void Stock_that_is_handed_on_in_order_is_on_the_shelf_or_in_the_one_production_that_counts_it() =>
        _moves.Sample(
            moves =>
            {
                var (findings, book) = DepartmentFiles.With(Written(moves, forgets: _ => false)).Run();
                var lot = Assert.Single(book.Shelf);
                Assert.Empty(findings);
                Assert.Equal(lot.Bought, lot.OnShelf + lot.Out);
                foreach (var share in book.Shares.Where(s => s.UnitsByBook.ContainsKey("S250")))
                {
                    Assert.Equal(share.UnitsByBook["S250"], lot.Units.Count(u => u.Holder == share.Name));
                }
            },
            iter: 60
        );

    [Fact]
    public void Whatever_is_forgotten_a_can_is_in_one_place() =>
        Gen.Select(_moves, Gen.Bool.Array[24])
            .Sample(
                term =>
                {
                    var (moves, forgotten) = term;
                    var book = DepartmentFiles.With(Written(moves, forgets: at => forgotten[at])).Run().Book;
                    var lot = Assert.Single(book.Shelf);
                    Assert.Equal(lot.Bought, lot.OnShelf + lot.Out);
                    Assert.Equal(lot.Out, book.Shares.Sum(s => lot.Units.Count(u => u.Holder == s.Name)));
                },
                iter: 60
            );

    [Fact]
    public void Where_no_loans_clash_a_body_is_with_one_production_every_night() =>
        Gen.Select(Gen.Int[0, 1], Gen.Int[0, 20], Gen.Int[1, 6])
            .Array[0, 6]
            .Sample(
                loans =>
                {
                    var yaml =
                        "# school.yaml\nbodies:\n  - {body: C1, speeds: [24]}\nloans:\n"
                        + string.Concat(
                            loans.Select(l =>
                                $"  - {{piece: C1, to: {_productions[l.Item1]}, out: {Day(l.Item2)}, {Back(l.Item2 + l.Item3)}}}\n"
                            )
                        );
                    var (findings, book) = DepartmentFiles.With(yaml).Run();
                    var nights = Enumerable.Range(0, 30).Select(n => _first.AddDays(n));
                    var most = nights.Max(night =>
                        book.Department.Loans.Where(l => l.Out.Value <= night && night < l.End).Select(l => l.To.Value).Distinct().Count()
                    );
                    Assert.Equal(most > 1, findings.Any(f => f.Check == "loan/clash"));
                },
                iter: 200
            );

    static readonly DateOnly _first = new(2026, 9, 1);

    // 2 is the shelf. Both sides write each hand-over, unless one of them forgets.
    static string Written(IReadOnlyList<(int Unit, int To)> moves, Func<int, bool> forgets)
    {
        var logs = _productions.ToDictionary(p => p, _ => new List<string>());
        var holder = new int[5];
        Array.Fill(holder, 2);
        foreach (var (at, (unit, to)) in moves.Index())
        {
            var from = holder[unit];
            if (from == to)
            {
                continue;
            }

            holder[unit] = to;
            if (from < 2 && !forgets(2 * at))
            {
                logs[_productions[from]].Add($"sent-away: {{lot: S250, units: [{unit}], to: {Name(to)}, on: {Day(at)}}}");
            }

            if (to < 2 && !forgets((2 * at) + 1))
            {
                logs[_productions[to]].Add($"came: {{lot: S250, units: [{unit}], from: {Name(from)}, on: {Day(at)}}}");
            }
        }

        return "# school.yaml\nlots:\n  - {lot: S250, stock: Colour negative 250 D, ei: 250, process: ecn-2, length: 100ft, units: 4}\n"
            + string.Concat(logs.Select(l => $"# {l.Key}/stock.yaml\nstock-log:\n{string.Concat(l.Value.Select(e => $"  - {e}\n"))}"));
    }

    static string Name(int holder) => holder < 2 ? _productions[holder] : "shelf";

    static string Back(int at) => $"back: {Day(at)}, came-back: {Day(at)}";

    static string Day(int at) => _first.AddDays(at).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
