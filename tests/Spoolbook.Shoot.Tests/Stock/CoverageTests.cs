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
}
