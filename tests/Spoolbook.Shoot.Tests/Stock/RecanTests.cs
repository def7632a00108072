using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Stock;

public class RecanTests
{
    static readonly Place Nowhere = new("rolls/r01.yaml", 1, 1, 1);

    // Four feet of head, a wet afternoon, and out again.
    static readonly Sheet Recan = Of(At(100)).AsTheCanSays().FromUnit(1).Head(At(4)).Remark("rain").Unload();

    static Sheet Sends(Sheet sheet, bool send) => new(sheet.Roll with { Lab = new RollOrder(Nowhere) { Send = Written(send) } });

    static ShootBook Book(Sheet sheet) => BookKeeper.Keep(SmallProduction.Of(sheet));

    [Fact]
    public void A_re_can_is_on_no_order_and_no_bill()
    {
        var books = Books.Of(SmallProduction.Of(Recan));

        Assert.Empty(books.Shoot.Sent);
        Assert.Empty(books.Cost.Order);
        Assert.Equal(At(96), Assert.Single(books.Stock.ShortEnds).OnHand);
    }

    [Fact]
    public void A_re_can_is_no_exposed_can() => Assert.Empty(Book(Recan).ExposedCans);

    [Fact]
    public void A_re_can_that_is_to_be_processed_goes_as_it_is()
    {
        var book = Book(Sends(Recan, true));

        Assert.Single(book.Sent);
        Assert.Single(book.ExposedCans);
    }

    [Fact]
    public void A_shot_roll_that_is_held_back_is_an_exposed_can()
    {
        var book = Book(Sends(Recan.Take("7B/1", At(20)), false));

        Assert.Empty(book.Sent);
        Assert.Single(book.ExposedCans);
    }

    [Fact]
    public void A_roll_in_the_camera_with_nothing_shot_yet_is_no_re_can() => Assert.False(Of(At(100)).Head(At(4)).Roll.IsUnshot);

    [Fact]
    public void A_re_can_leaves_the_take_up_spool_that_it_was_threaded_on()
    {
        var kit = SmallProduction.Of(Recan) with
        {
            Items = [new KitItem(Nowhere, Written("Spools"), Written(true), new Returned(1, null, null))],
        };

        var spools = Books.Of(kit).Spools;
        Assert.Equal((1, 0), (spools.Empty, spools.Gone));
    }
}
