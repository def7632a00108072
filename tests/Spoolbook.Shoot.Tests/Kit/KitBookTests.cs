using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Kit;

public class KitBookTests
{
    // Two bodies, of which one is back and has a value; a filter; four spools at 2.50, of which three are back.
    static Production Lent
    {
        get
        {
            var small = SmallProduction.Of();
            return small with
            {
                Bodies =
                [
                    small.Bodies[0] with
                    {
                        Returned = new Returned(1, Written(1), null) { Value = Written(1200m) },
                    },
                    small.Bodies[1],
                ],
                Items = [Item("Spools", new Returned(4, Written(3), null) { Value = Written(2.50m) })],
            };
        }
    }

    [Fact]
    public void A_line_of_four_spools_is_four_pieces()
    {
        var kit = KitOf(Lent);

        Assert.Equal((7, 4, true), (kit.Out, kit.Back, kit.IsOut));
    }

    // 1200 + 4 × 2.50; the other body and the filter have no value written.
    [Fact]
    public void The_value_counts_each_piece_and_names_how_many_have_none()
    {
        var kit = KitOf(Lent);

        Assert.Equal((1210m, 2), (kit.Value, kit.WithoutValue));
        Assert.Null(KitOf(SmallProduction.Of()).Value);
    }

    [Fact]
    public void A_kit_is_out_until_the_return_of_its_last_piece_is_written()
    {
        Assert.True(KitOf(SmallProduction.Of()).IsOut);

        var (back, kit) = (new Returned(1, Written(1), null), SmallProduction.Of());
        var returned = kit with
        {
            Bodies = [.. kit.Bodies.Select(b => b with { Returned = back })],
            Filters = [.. kit.Filters.Select(f => f with { Returned = back })],
        };
        Assert.False(KitOf(returned).IsOut);
    }

    [Fact]
    public void A_piece_that_did_not_come_back_is_written_down_and_no_longer_out()
    {
        var spools = Item("Spools", new Returned(4, Written(0), null));
        var kit = KitOf(SmallProduction.Of() with { Bodies = [], Filters = [], Items = [spools] });

        Assert.Equal((4, 0, false), (kit.Out, kit.Back, kit.IsOut));
    }

    [Fact]
    public void A_kit_of_nothing_is_worth_nothing_written_and_is_not_out()
    {
        var kit = KitOf(SmallProduction.Of() with { Bodies = [], Filters = [] });

        Assert.Equal((0, 0, false, null, 0), (kit.Out, kit.Back, kit.IsOut, kit.Value, kit.WithoutValue));
    }

    [Fact]
    public void The_last_roll_threaded_is_in_the_body()
    {
        var first = Of(At(100)).LoadedOn(StockSheets.Saturday).Take("1A/1", At(100)).Unload().OutOn(StockSheets.Saturday);
        var second = Of(At(100), "R02").LoadedOn(StockSheets.Sunday).Take("1A/2", At(20));

        Assert.Equal(["R02", null], FilmIn(SmallProduction.Of(first, second)));
    }

    [Fact]
    public void An_unloaded_roll_leaves_its_body_empty() =>
        Assert.Equal([null, null], FilmIn(SmallProduction.Of(Of(At(100)).Take("1A/1", At(100)).Unload())));

    // R01 goes over to the other body on Monday and comes back on Tuesday, after R02 was in and out.
    [Fact]
    public void A_roll_that_was_in_the_other_body_for_a_while_is_in_the_first_again()
    {
        var wandered = Of(At(100)).Take("1A/1", At(20)).Reload(body: "B2", on: Monday(9)).Reload(body: "B1", on: Monday(33));
        var between = Of(At(50), "R02").LoadedOn(StockSheets.Sunday.AddDays(1), 12).Take("1A/2", At(50)).Unload(on: Monday(16));

        Assert.Equal(["R01", null], FilmIn(SmallProduction.Of(wandered, between)));
    }

    [Fact]
    public void Only_a_camera_has_film_in_it_whatever_a_case_is_called()
    {
        var small = SmallProduction.Of(Of(At(100)).Take("1A/1", At(20)));
        var kit = KitOf(small with { Items = [Item("B1", new Returned(1, null, null))] });

        Assert.Equal([KitKind.Body], kit.Pieces.Where(p => p.FilmIn is not null).Select(p => p.Kind));
    }

    [Fact]
    public void A_body_has_a_spring_where_its_full_wind_or_its_tension_is_written()
    {
        var body = SmallProduction.Of().Bodies[0];
        Body[] bodies =
        [
            body,
            body with { FullWind = Written(At(16, 20)) },
            body with { Spring = Written(SpringLeft.Wound) },
        ];

        var pieces = KitOf(SmallProduction.Of() with { Bodies = [.. bodies] }).Pieces.Where(p => p.Kind == KitKind.Body);
        Assert.Equal([(false, null), (true, null), (true, SpringLeft.Wound)], pieces.Select(p => (p.HasSpring, p.SpringLeft)));
    }

    [Fact]
    public void The_list_keeps_what_a_body_and_a_lens_must_fit_together()
    {
        var small = SmallProduction.Of();
        var body = small.Bodies[0] with { Turret = [Written("25mm"), Written("10mm")], Sprockets = Written(2) };
        var lens = new Lens(Nowhere) { Name = Written("10mm"), MadeFor = Written(LensMadeFor.Prism) };

        var pieces = KitOf(small with { Bodies = [body], Lenses = [lens] }).Pieces;
        Assert.Equal<string>(["25mm", "10mm"], pieces[0].Turret);
        Assert.Equal(2, pieces[0].Sprockets);
        Assert.Equal((KitKind.Lens, LensMadeFor.Prism), (pieces[1].Kind, pieces[1].MadeFor));
    }

    [Fact]
    public void Only_items_that_say_so_are_take_up_spools()
    {
        var one = new Returned(1, null, null);
        KitItem[] items =
        [
            new(Nowhere, Written("Spools"), Written(true), one),
            new(Nowhere, Written("Cores"), Written(false), one),
            Item("Bag", one),
        ];

        var pieces = KitOf(SmallProduction.Of() with { Items = [.. items] }).Pieces.Where(p => p.Kind == KitKind.Item);
        Assert.Equal([true, false, false], pieces.Select(p => p.TakeUp));
    }

    [Fact]
    public void A_piece_lent_twice_is_on_the_later_loan_in_any_order_of_the_list()
    {
        KitLoan[] loans = [Loan("B1", StockSheets.Friday), Loan("B2", StockSheets.Sunday), Loan("B1", StockSheets.Saturday)];

        Assert.Equal([StockSheets.Saturday, StockSheets.Sunday, null], OutOn(loans));
        Assert.Equal([StockSheets.Saturday, StockSheets.Sunday, null], OutOn([.. loans.Reverse()]));

        static IEnumerable<DateOnly?> OutOn(KitLoan[] loans) =>
            KitOf(SmallProduction.Of() with { SchoolLoans = [.. loans] }).Pieces.Select(p => p.SchoolLoan?.Out.Value);
    }

    static KitLoan Loan(string piece, DateOnly day) =>
        new(Nowhere)
        {
            Piece = Written(piece),
            To = Written("FERRY"),
            Out = Written(day),
            Back = Written(day.AddDays(1)),
        };

    static KitItem Item(string name, Returned returned) => new(Nowhere, Written(name), null, returned);

    // Hours after midnight of the Monday that follows the builder's Sunday.
    static DateTime Monday(int hours) => FirstDay.AddDays(1).ToDateTime(TimeOnly.MinValue).AddHours(hours);

    static KitBook KitOf(Production production) => Books.Of(production).Kit;

    static IEnumerable<string?> FilmIn(Production production) =>
        KitOf(production).Pieces.Where(p => p.Kind == KitKind.Body).Select(p => p.FilmIn?.Name.Value);
}
