using Spoolbook.Schools;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoots;

namespace Spoolbook.Tests;

/// <summary>Generated terms: what students who slip never give nothing to find, and careful ones nothing.</summary>
public sealed class TermOfShootsTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_careful_crew_gives_the_checks_nothing_to_find()
    {
        new TermOfShoots(1, 3, MistakeRates.None).WriteTo(_bench.PathOf("term"));
        var (status, printed, _) = _bench.Run("check", "term");
        Assert.True(status == 0, printed);
        Assert.EndsWith("3 productions: no errors, no warnings, no notes.\n", printed, StringComparison.Ordinal);
        // They do note no time of day, and nobody read the dial.
        Assert.Matches("Not looked at, because it is not noted[^\n]*: [a-z -]+ in 3", printed);
    }

    [Fact]
    public void Students_slip_and_the_checks_find_it()
    {
        var term = new TermOfShoots(1, 6, MistakeRates.Usual);
        term.WriteTo(_bench.PathOf("term"));
        var printed = _bench.Run("check", "term").Out;
        Assert.True(term.Mistakes > 0);
        Assert.DoesNotContain("6 productions: no errors, no warnings", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_seed_gives_the_same_term()
    {
        var (one, same, other) = (Files(7), Files(7), Files(8));
        Assert.Equal(one, same);
        Assert.NotEqual(one, other);
    }

    // Twelve cans of its own and one from the shelf each, of 100 ft: 4,000 frames.
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, true)]
    public void Stock_over_all_productions_and_the_shelf_is_what_was_bought(int seed, bool slips)
    {
        const int productions = 5;
        var book = BookOf(new TermOfShoots(seed, productions, slips ? MistakeRates.Usual : MistakeRates.None));

        var stock = Assert.Single(book.Stock);
        var exposed = book.Shares.SelectMany(s => s.Stock).Sum(k => k.Exposed.Frames);
        Assert.Equal(productions * 13 * 4000L, stock.OnShelf.Frames + stock.InProductions.Frames + exposed);
        var lot = Assert.Single(book.Shelf);
        Assert.Equal((productions, productions), (lot.Bought, lot.OnShelf + lot.Out));
        Assert.All(book.Shares, share => Assert.Equal(share.UnitsByBook["SHELF"], lot.Units.Count(u => u.Holder == share.Name)));
        Assert.Empty(book.Disagreements);
    }

    // The school has twenty bodies, so the last productions get one that another had a week before.
    [Fact]
    public void A_body_is_in_one_place_at_every_moment()
    {
        var book = BookOf(new TermOfShoots(4, 23, MistakeRates.None));

        var shared = book.Shares.SelectMany(s => s.Bodies.Select(use => (s.Name, Use: use))).ToLookup(u => u.Use.Body);
        Assert.Equal(3, shared.Count(body => body.Select(u => u.Name).Distinct().Count() > 1));
        foreach (var body in shared)
        {
            var loans = book.Department.Loans.Where(l => l.Piece.Value == body.Key).ToList();
            Assert.DoesNotContain(loans, l => loans.Exists(other => other != l && other.Overlaps(l)));
            Assert.All(body, u =>
            {
                var loan = Assert.Single(loans, l => l.Covers(u.Use.From) && l.Covers(u.Use.To));
                Assert.True(book.Named(loan.To.Value)?.Name == u.Name, $"{u.Name} has {body.Key} on {u.Use.From}, lent to {loan.To.Value}");
            });
            Assert.DoesNotContain(body, u =>
                body.Any(other => other.Name != u.Name && other.Use.From <= u.Use.To && u.Use.From <= other.Use.To)
            );
        }
    }

    DepartmentBook BookOf(TermOfShoots shoots)
    {
        shoots.WriteTo(_bench.PathOf("term"));
        var around = new CommandEnvironment(TextWriter.Null, TextWriter.Null, _bench.Folder, Workbench.Made, Colour: false, Width: 100);
        var term = new SchoolTerm("term", around);
        foreach (var production in ProductionFolders.Below(_bench.PathOf("term")))
        {
            term.Add(Pipeline.Run(production, around).Found);
        }

        var book = term.Close().Book!;
        Assert.Equal(shoots.Productions, book.Shares.Length);
        return book;
    }

    static List<(string Name, string Text)> Files(int seed) => [.. new TermOfShoots(seed, 2, MistakeRates.Usual).Files()];
}
