using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Stock;

public class CoverageTests
{
    static readonly Place Nowhere = new("production.yaml", 1, 1, 1);

    // A take that went wrong, wound back, and the good one over the same film.
    static readonly Sheet Over = Of(At(100))
        .FromUnit(1)
        .Head(At(4))
        .Take("1A/1", At(14, 20), mark: Mark.NoGood)
        .Rewind(At(4))
        .Take("1A/2", At(14, 20));

    static CoverageBook Coverage(Sheet sheet, params string[] listed) =>
        Books
            .Of(
                SmallProduction.Of(sheet) with
                {
                    Shots = [.. listed.Select(s => new PlannedShot(Nowhere, Written(s[..1]), Written(s[1..]), null, null, null))],
                }
            )
            .Coverage;

    static string[] Got(Sheet sheet) => [.. Coverage(sheet, "1A").Got.Select(s => s.Name)];

    [Fact]
    public void A_good_take_over_a_no_good_one_gets_no_shot()
    {
        var coverage = Coverage(Over, "1A");

        Assert.Empty(coverage.Got);
        Assert.False(Assert.Single(coverage.Listed).IsGot);
        Assert.Equal("1A", Assert.Single(coverage.Left!.Value).Name);
    }

    [Fact]
    public void A_shot_that_is_not_got_is_not_finished_in_the_forecast() =>
        Assert.Empty(Books.Of(SmallProduction.Of(Over)).Forecast.Input.Finished);

    [Fact]
    public void A_good_take_with_some_film_of_its_own_gets_its_shot() => Assert.Equal(["1A"], Got(Over.Take("1A/3", At(16))));

    // The name of the check is the contract: it is what the production writes under accept.
    [Fact]
    public void A_shot_that_the_production_goes_without_needs_no_film()
    {
        var production = SmallProduction.Of(Of(At(100)).Take("1A/1", At(10)).Take("2B/1", At(20), mark: Mark.NoGood)) with
        {
            Shots =
            [
                new(Nowhere, Written("1"), Written("A"), null, null, null),
                new(Nowhere, Written("2"), Written("B"), null, null, null),
            ],
        };
        Assert.Equal(1, Books.Of(production).Forecast.Input.ShotsLeft);

        var waiver = new Waiver(Nowhere) { Check = Written("cover/shot-without-good-take"), Shot = Written("2B") };
        var without = Books.Of(production with { Accept = [waiver] });

        Assert.Equal(0, without.Forecast.Input.ShotsLeft);
        Assert.Equal(["1A"], without.Coverage.Wanted.Select(s => s.Name));
        Assert.True(without.Coverage.Listed[1].IsDropped);
    }

    [Fact]
    public void Two_good_takes_over_one_another_get_both_shots() =>
        Assert.Equal(
            ["1A", "1B"],
            Coverage(Of(At(100)).Take("1A/1", At(10), exposed: -1).Rewind(At(0)).Take("1B/1", At(10), exposed: -1), "1A", "1B")
                .Got.Select(s => s.Name)
        );

    [Fact]
    public void A_good_take_that_was_fogged_from_end_to_end_gets_no_shot() =>
        Assert.Empty(Got(Of(At(100)).Take("1A/1", At(1)).Fog(At(1), At(0))));

    [Fact]
    public void Shots_are_got_in_the_order_in_which_they_were_shot_and_not_in_that_of_the_rolls()
    {
        var later = Of(At(100)).Take("1A/1", At(10)).Take("1B/1", At(20));
        var earlier = Of(At(100), "R02").LoadedOn(StockSheets.Friday).Take("1C/1", At(10)).Take("1B/2", At(20));
        var coverage = Books.Of(SmallProduction.Of(later, earlier)).Coverage;

        Assert.Equal(["1C", "1B", "1A"], coverage.Got.Select(s => s.Name));
    }

    [Fact]
    public void Without_a_shot_list_the_shots_that_were_shot_are_counted_and_with_one_those_of_the_list()
    {
        var sheet = Of(At(100)).Take("1A/1", At(10)).Take("1B/1", At(20));

        Assert.Equal(["1A", "1B"], Coverage(sheet).Counted.Select(s => s.Name));
        Assert.Null(Coverage(sheet).Left);
        Assert.Equal(["1A", "1C"], Coverage(sheet, "1A", "1C").Counted.Select(s => s.Name));
    }

    // A scratch test, and a take of the shot that is marked as a test.
    static readonly Sheet Tests = Of(At(100))
        .FromUnit(1)
        .Take("T/1", At(2), mark: Mark.Test)
        .Take("1A/1", At(6), mark: Mark.Test)
        .Take("1A/2", At(10))
        .Take("1B/1", At(12), mark: Mark.Test)
        .Unload();

    [Fact]
    public void A_test_is_no_shot_and_no_take_of_one()
    {
        var coverage = Coverage(Tests, "1A", "1B");

        Assert.Empty(coverage.Unlisted);
        Assert.Equal([("1A", 1), ("1B", 0)], coverage.Listed.Select(s => (s.Name, s.Takes.Length)));
        Assert.Equal(["1B"], coverage.Left!.Value.Select(s => s.Name));
    }

    [Fact]
    public void A_test_counts_in_no_takes_a_shot()
    {
        var use = Books.Of(SmallProduction.Of(Tests)).Stock.Use;

        Assert.Equal((4, 1), (use.Takes, use.Shots));
        Assert.Equal(1, use.TakesAShot);
    }

    [Fact]
    public void Film_of_a_test_is_lost_beside_the_shots_and_is_no_film_of_them()
    {
        var input = Books.Of(SmallProduction.Of(Tests)).Forecast.Input;

        Assert.Equal(At(4), Assert.Single(input.Finished).Film);
        Assert.Equal(At(8), Assert.Single(input.Lost));
    }
}
