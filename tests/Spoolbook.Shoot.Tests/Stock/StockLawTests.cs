using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Stock;

/// <summary>Laws of stock, on carelessly logged shoots.</summary>
public class StockLawTests
{
    [Fact]
    public void Every_unit_is_somewhere_exactly_once() =>
        AnyShoot.Production.Sample(production =>
        {
            foreach (var lot in production.Stock().Lots)
            {
                Assert.True(lot is { UnitsUnopened: >= 0, UnitsLoaded: >= 0, UnitsPractised: >= 0, UnitsSentAway: >= 0, UnitsLost: >= 0 });
                Assert.Equal(
                    lot.UnitsReceived + lot.UnitsCame,
                    lot.UnitsUnopened + lot.UnitsLoaded + lot.UnitsPractised + lot.UnitsSentAway + lot.UnitsLost
                );
            }
        });

    [Fact]
    public void Every_foot_received_is_somewhere_exactly_once() =>
        AnyShoot.Production.Sample(production =>
        {
            foreach (var lot in production.Stock().Lots)
            {
                Assert.Equal(
                    lot.Received + lot.Came + lot.Remeasured,
                    lot.Unopened + lot.Exposed + lot.ShortEnds + lot.InCamera + lot.Practice + lot.Unread + lot.SentAway + lot.Lost
                );
            }
        });

    [Fact]
    public void The_bridge_from_the_film_bought_to_the_film_left_holds_to_the_frame_and_as_printed() =>
        AnyShoot.Production.Sample(production =>
        {
            var bridge = Books.Of(production).Bridge;
            Assert.Equal(bridge.Origins.Sum(o => o.Film.Frames), bridge.All.Frames);
            Assert.Equal(bridge.Origins.Sum(o => o.Centimetres), bridge.Centimetres);
            Assert.All(bridge.Places, p => Assert.True(p.Film >= Footage.Zero, p.ToString()));
        });

    // What went and came back is neither gone nor new.
    [Fact]
    public void A_can_that_came_back_is_in_the_bridge_as_if_it_had_never_gone() =>
        AnyShoot.Production.Sample(production =>
        {
            var (bridge, cans) = (Books.Of(production).Bridge, production.Stock().Cans);
            Footage In(StockPlace place) =>
                StockBook.Sum(cans.Where(c => c.On(DateOnly.MaxValue) == place), c => c.FilmOn(DateOnly.MaxValue));
            Assert.Equal(In(StockPlace.SentAway), bridge.At(FilmPlace.SentAway).Film);
            Assert.Equal(In(StockPlace.Lost), bridge.At(FilmPlace.Lost).Film + bridge.At(FilmPlace.Damaged).Film);
        });

    [Fact]
    public void Every_can_is_in_one_place_on_every_evening_and_gets_there_by_what_happened() =>
        AnyShoot.Production.Sample(production =>
        {
            var stock = production.Stock();
            foreach (var can in stock.Cans)
            {
                // The twin: who had it last, followed forwards from one entry to the next.
                var happened = can
                    .Moves.Where(m => m.Counts)
                    .Select(m => (m.At, Turn: 1, Place: AfterMove(m.Entry)))
                    .Concat(Camera(can.Load))
                    .OrderBy(h => h.At)
                    .ThenBy(h => h.Turn);
                var at = can.ShortEnd is not null || can.Unit > can.Lot.Units.Value ? StockPlace.NotYet : StockPlace.Store;
                var made = can.ShortEnd is { } end ? end.Made : DateOnly.MinValue;
                for (var evening = StockSheets.Friday.AddDays(-2); evening < StockSheets.Friday.AddDays(6); evening = evening.AddDays(1))
                {
                    var place = evening >= made && can.ShortEnd is not null ? StockPlace.Store : at;
                    place = happened.Where(h => DateOnly.FromDateTime(h.At) <= evening).Aggregate(place, (was, h) => h.Place ?? was);
                    Assert.Equal(place, can.On(evening));
                }
            }
        });

    static StockPlace? AfterMove(StockEntry entry) =>
        entry switch
        {
            StockCame => StockPlace.Store,
            StockSentAway => StockPlace.SentAway,
            StockRecanned or StockSplit => null,
            _ => StockPlace.Lost,
        };

    static IEnumerable<(DateTime At, int Turn, StockPlace? Place)> Camera(StockLoad? load)
    {
        if (load is not null)
        {
            yield return (load.Roll.Load.On.Value, 2, load.Roll.IsPractice ? StockPlace.Practised : StockPlace.Camera);
            if (load.Roll is { IsPractice: false, Unload: { } unload })
            {
                yield return (unload.On.Value, 3, StockPlace.Shot);
            }
        }
    }

    [Fact]
    public void From_one_evening_to_the_next_film_on_hand_changes_by_what_came_went_and_was_loaded_or_canned() =>
        AnyShoot.Production.Sample(production =>
        {
            var stock = production.Stock();
            var before = stock.Counted.Sum(l => l.Received);
            foreach (var day in stock.Days)
            {
                // A careless sheet can load a short end before it was cut. Then it was never on hand.
                var loaded = stock.Loads.Where(l => Later(l.On, MadeOn(l)) == day.On).Sum(l => l.Said);
                Assert.Equal(before + day.Came + day.ShortEndsMade - day.Went - loaded, day.OnHand);
                before = day.OnHand;
            }
        });

    static DateOnly MadeOn(StockLoad load) =>
        load.Parent?.Unload is { } unload ? DateOnly.FromDateTime(unload.On.Value) : DateOnly.MinValue;

    static DateOnly Later(DateOnly a, DateOnly b) => a > b ? a : b;

    [Fact]
    public void Nothing_is_sent_lost_or_canned_again_that_is_not_on_hand() =>
        AnyShoot.Production.Sample(production =>
        {
            var stock = production.Stock();
            Assert.All(stock.Days, day => Assert.True(day.OnHand >= Footage.Zero));
            Assert.All(stock.Moves.Where(m => !m.Counts), m => Assert.Equal(Footage.Zero, m.Change));
        });

    [Fact]
    public void Film_in_no_lot_is_the_film_of_rolls_that_are_placed_nowhere() =>
        AnyShoot.Production.Sample(production =>
        {
            var book = BookKeeper.Keep(production);
            var stock = StockBook.Keep(book);
            var nowhere = book.Rolls.Where(r => stock.Unplaced.Contains(r.Roll)).Sum(r => r.Tally.Exposed);
            Assert.Equal(book.Total.Exposed, stock.Lots.Sum(l => l.Exposed) + nowhere);
        });

    [Fact]
    public void The_days_add_up_to_the_shoot() =>
        AnyShoot.Production.Sample(production =>
        {
            var book = BookKeeper.Keep(production);
            var days = StockBook.Keep(book).Days;
            Assert.Equal(book.Total.Loaded, days.Sum(d => d.Use.Tally.Loaded));
            Assert.Equal(book.Total.Good, days.Sum(d => d.Use.Tally.Good));
            Assert.Equal(book.Counted.Sum(r => r.Layers.Length), days.Sum(d => d.Use.Takes));
            Assert.Equal(book.Total.Loaded, days.Sum(d => d.Loaded));
        });

    [Fact]
    public void The_last_evening_is_what_is_left_of_the_shoot() =>
        AnyShoot.Production.Sample(production =>
        {
            var stock = production.Stock();
            if (stock.Days is [.., var last])
            {
                Assert.Equal((stock.OnHand, stock.Left), (last.OnHand, last.Left));
            }
        });

    [Fact]
    public void The_order_of_the_roll_files_changes_nothing() =>
        Gen.Select(AnyShoot.Production, Gen.Int[0, 99])
            .Sample(
                (production, turn) =>
                {
                    // Loading times tell rolls apart, so that their order does not depend on the order of the files.
                    var told = production
                        .Rolls.Select((r, i) => r with { Load = r.Load with { On = Written(r.Load.On.Value.AddMinutes(i)) } })
                        .ToList();
                    var at = told.Count == 0 ? 0 : turn % told.Count;
                    var straight = (production with { Rolls = [.. told] }).Stock();
                    var turned = (production with { Rolls = [.. told.Skip(at), .. told.Take(at)] }).Stock();
                    Assert.Equal(
                        straight.Lots.Select(l => (l.Left, l.Exposed, l.Practice)),
                        turned.Lots.Select(l => (l.Left, l.Exposed, l.Practice))
                    );
                    Assert.Equal(straight.Days.Select(d => (d.On, d.Left)), turned.Days.Select(d => (d.On, d.Left)));
                }
            );
}
