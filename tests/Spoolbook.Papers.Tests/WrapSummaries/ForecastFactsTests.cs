using Spoolbook.Film;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.WrapSummaries;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Tests.WrapSummaries;

/// <summary>The forecast as a producer reads it: the figures, and no more than is known.</summary>
public class ForecastFactsTests
{
    static readonly PaperFormat InFeet = WordingOf("feet");
    static readonly PaperFormat InMetres = WordingOf("metres");

    // Five shots of 10 ft and no losses: five more need 50 ft, in every case.
    static readonly ForecastInput Alike = new()
    {
        Finished = [.. Enumerable.Range(1, 5).Select(i => new FinishedShot($"{i}A", new Footage(400)))],
        Lost = [],
        FilmOfShots = new Footage(2000),
        ShotsLeft = 5,
        Stock = new Footage(8000),
        Unit = new Footage(4000),
    };

    [Fact]
    public void The_figures_are_in_whole_feet_with_the_cans_to_order()
    {
        var facts = Of(Alike with { Stock = new Footage(1999) });
        Assert.Equal("Units of 100 ft", facts.UnitHead);
        ForecastLine[] figures =
        [
            new("50\u00A0%", "50 ft", "1", "1 ft", "1"),
            new("80\u00A0%", "50 ft", "1", "1 ft", "1"),
            new("95\u00A0%", "50 ft", "1", "1 ft", "1"),
        ];
        Assert.Equal(figures, facts.Figures.ToArray());
    }

    // The 80 % figure is the one to order by. Whoever asks where it comes from finds it in the table with the others.
    [Fact]
    public void The_film_needed_is_among_the_answers_and_in_the_table_and_nowhere_else()
    {
        var facts = Of(Alike);
        Assert.Single(facts.Answers, a => a.Value == "50 ft: 80\u00A0% sure");
        Assert.Equal("50 ft", Assert.Single(facts.Figures, f => f.Sure == "80\u00A0%").Needed);
        Assert.DoesNotContain(facts.Notes.Concat(facts.GoesBy), n => n.Contains("50 ft", StringComparison.Ordinal));
    }

    [Fact]
    public void The_forecast_never_says_for_certain_that_film_lasts_or_runs_out()
    {
        Assert.Equal(
            [
                new("96\u00A0% sure", "Will the film last?"),
                new("50 ft: 80\u00A0% sure", "Film needed for 5 shots"),
                new("nothing", "Order"),
            ],
            Of(Alike).Answers.ToArray()
        );
        Assert.Equal("under 1\u00A0% sure", Of(Alike with { Stock = new Footage(1999) }).Answers[0].Value);
    }

    [Fact]
    public void The_chance_and_the_average_of_the_same_film_are_told_apart()
    {
        Assert.Equal(
            "Simulated: the film left was enough in under 1\u00A0% of the runs, and 50 ft in 80\u00A0%. The average run took 50+00 ft.",
            Of(Alike with { Stock = new Footage(1999) }).Explained
        );
        Assert.Empty(Of(Alike with { Finished = Alike.Finished[..4] }).Explained);
    }

    // In 96 of 100 simulated shoots film that was enough in 99 of 100 runs was enough: FORECAST.md.
    [Fact]
    public void Where_nearly_all_runs_had_enough_film_it_says_that_so_few_shots_prove_no_more() =>
        Assert.Equal(
            "Simulated: 50 ft was enough in 80\u00A0% of the runs, the film left in nearly all; 5 shots so far prove no more than "
                + "96\u00A0%. The average run took 50+00 ft.",
            Of(Alike).Explained
        );

    // Twelve units of daylight stock are no film for three shots by lamplight.
    [Fact]
    public void What_to_order_is_named_and_film_for_another_light_is_not_promised()
    {
        var facts = Of(
            Alike with
            {
                Stock = new Footage(48_000),
                Pools = [new(ColourBalance.Daylight, new Footage(48_000)), new(ColourBalance.Tungsten, Footage.Zero)],
                Kinds =
                [
                    new(SubjectLight.Tungsten, [1], new("500 T", ColourBalance.Tungsten, new Footage(600), [])),
                    new(SubjectLight.Daylight, [0], new("250 D", ColourBalance.Daylight, new Footage(4000), [])),
                ],
                ToCome = [.. Enumerable.Range(1, 5).Select(i => new ShotToCome($"{i}B", i < 4 ? 0 : 1, null))],
            }
        );
        Assert.Equal(["under 1\u00A0% sure", "50 ft: 80\u00A0% sure", "2 units of 500 T"], facts.Answers.Select(a => a.Value));
        Assert.Equal(
            ["For the 3 shots in tungsten light: 0+00 ft.", "Probably gone by the evening of the next shooting day."],
            facts.Notes.ToArray()
        );
        Assert.All(facts.Figures, f => Assert.Equal(("30 ft", "2 units of 500 T"), (f.Lacking, f.ToOrder)));
    }

    [Fact]
    public void The_day_on_which_the_film_runs_out_is_named_by_its_date_or_counted_from_now()
    {
        var friday = new DateOnly(2026, 10, 2);
        Assert.Equal(
            ["Probably gone by the evening of Fri 2 Oct 2026."],
            Of(Alike with { Stock = new Footage(1000), DaysToCome = [friday, friday.AddDays(1)] }).Notes.ToArray()
        );
        Assert.Equal(
            ["Probably gone by the evening of the next shooting day."],
            Of(Alike with { Stock = Footage.Zero, DaysShot = 1 }).Notes.ToArray()
        );
        Assert.Equal(
            ["Probably gone by the evening of shooting day 3 from now."],
            Of(Alike with { Stock = new Footage(1000), DaysShot = 5 }).Notes.ToArray()
        );
        Assert.Empty(Of(Alike).Notes);
    }

    [Fact]
    public void Four_shots_give_an_average_and_no_chance()
    {
        var facts = Of(Alike with { Finished = Alike.Finished[..4], Stock = new Footage(1900) });
        Assert.Equal(["3 ft short", "50 ft on average", "1"], facts.Answers.Select(a => a.Value));
        Assert.Equal(["Only 4 shots got so far: this is their average. Odds from 5 on."], facts.Notes.ToArray());
        Assert.Empty(facts.Figures);
        Assert.Empty(facts.Method);
        Assert.Single(facts.GoesBy);
    }

    [Fact]
    public void The_method_is_described_in_two_sentences_with_its_figures()
    {
        var method = Of(Alike).Method;
        Assert.Equal(2, method.Split(". ").Length);
        Assert.Contains("simulated 4,000 times", method, StringComparison.Ordinal);
        Assert.Contains("5 shots got", method, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_with_every_shot_got_needs_nothing_and_a_missing_list_says_so()
    {
        Assert.Equal([new("yes: every shot is got", "Will the film last?")], Of(Alike with { ShotsLeft = 0 }).Answers.ToArray());
        Assert.Equal("not known yet", Of(Alike with { ShotsLeft = null }).Answers.Single().Value);
        Assert.StartsWith("No forecast: no shots are listed", Of(Alike with { ShotsLeft = null }).Notes.Single(), StringComparison.Ordinal);
        Assert.Equal("No shot has a good take yet. Still to get: 1 shot.", Of(Alike with { Finished = [], ShotsLeft = 1 }).Notes.Single());
    }

    [Fact]
    public void A_shot_that_was_dropped_is_not_called_got()
    {
        var facts = ForecastFacts.Of(FilmForecast.Compute(Alike with { ShotsLeft = 0 }), InFeet, dropped: ["4A"]);

        Assert.Equal("nothing left to shoot (4A dropped)", facts.Answers.Single().Value);
    }

    [Fact]
    public void Without_received_stock_the_forecast_does_not_say_what_is_left()
    {
        var facts = Of(Alike with { Unit = null, Stock = Footage.Zero });
        Assert.Equal(["50 ft: 80\u00A0% sure"], facts.Answers.Select(a => a.Value));
        Assert.All(facts.Figures, f => Assert.Equal(("50 ft", "–", "–", "–"), (f.Needed, f.Units, f.Lacking, f.ToOrder)));
    }

    // 2000 frames of 16 mm: 15.24 m, since 40 make a foot of 0.3048 m.
    [Fact]
    public void A_production_in_metres_reads_metres_rounded_up() =>
        Assert.Equal("16 m", ForecastFacts.Of(FilmForecast.Compute(Alike), InMetres).Figures[0].Needed);

    // 100 ft on the can, and nobody sells units of 31 m.
    [Fact]
    public void A_unit_is_as_long_as_its_can_says() =>
        Assert.Equal("Units of 30.48 m", ForecastFacts.Of(FilmForecast.Compute(Alike), InMetres).UnitHead);

    static ForecastFacts Of(ForecastInput ground) => ForecastFacts.Of(FilmForecast.Compute(ground), InFeet);

    static PaperFormat WordingOf(string units)
    {
        var production = Shoots.Of(TextFiles.OneFile($"spoolbook: 1\ntitle: Nothing yet\ncode: NIL\nunits: {units}\n")).Shoot.Production;
        return new PaperFormat(production, Translations.Parse(new HouseTemplates().Find("words.en.txt")!.Text));
    }
}
