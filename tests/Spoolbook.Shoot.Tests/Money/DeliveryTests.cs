using Spoolbook.Film;
using Spoolbook.Film.Scans;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Money;

public class DeliveryTests
{
    static readonly Deliver _tenBit = new(default) { Raster = Written(new Raster(2048, 1536)), Bits = Written(10) };

    // Digital Fact Book: 100 ft fill 50 GB. They run 2:46.67 at 24 (arithmetic, 36 ft a minute).
    [Fact]
    public void A_roll_of_a_hundred_feet_is_4000_frames_and_50_gigabytes()
    {
        var book = Delivered(_tenBit, Shot(100).Lab(services: "scan"));

        var files = book.Files(book.Rolls);
        Assert.Equal((4000, "166.67", "50.33"), (files.Frames, files.Seconds.ToText(2), files.Gigabytes?.ToText(2)));
    }

    [Fact]
    public void A_box_is_the_sum_of_its_rolls()
    {
        var book = Delivered(_tenBit, Shot(100).Lab(services: "scan"), Shot(50, "R02", 2).Lab(services: "scan"));

        Assert.Equal(6000, book.Files(book.Rolls).Frames);
    }

    [Fact]
    public void A_roll_that_is_not_scanned_has_no_files() => Assert.Empty(Delivered(_tenBit, Shot(100).Lab(services: "prep")).Rolls);

    [Fact]
    public void A_roll_that_is_scanned_among_other_work_has_files_and_another_has_none()
    {
        var books = Books.Of(Ordered(_tenBit, Shot(100).Lab(services: ["prep", "scan"]), Shot(50, "R02", 2).Lab(services: "prep")));

        Assert.Equal([At(100), null], books.Shoot.Rolls.Select(r => books.Delivery.Of(r)?.Film));
        Assert.Equal("R01", Assert.Single(books.Delivery.Of(books.Cost.Sendings.Single())).Roll.Roll.Name.Value);
    }

    [Fact]
    public void A_scan_without_a_word_on_what_to_deliver_is_missing_one()
    {
        Assert.True(IsMissing(null, Shot(100).Lab(services: "scan"), Shot(50, "R02", 2).Lab(services: "prep")));
        Assert.False(IsMissing(null, Shot(100).Lab(services: "prep")));
        Assert.False(IsMissing(_tenBit, Shot(100).Lab(services: "scan")));

        static bool IsMissing(Deliver? deliver, params Sheet[] sheets)
        {
            var books = Books.Of(Ordered(deliver, sheets));
            return books.Delivery.IsMissing(books.Cost.Sendings.Single());
        }
    }

    [Fact]
    public void Nothing_is_counted_where_nothing_is_ordered() => Assert.Empty(Delivered(null, Shot(100).Lab(services: "scan")).Rolls);

    // The rolls fill 50.332 and 37.749 GB, and both 88.080: the second takes the tenth that rounding leaves.
    [Fact]
    public void Tenths_of_a_gigabyte_add_up_to_the_sum_as_printed()
    {
        var book = Delivered(_tenBit, Shot(100).Lab(services: "scan"), Shot(75, "R02", 2).Lab(services: "scan"));

        Assert.Equal([503, 378], book.Rolls.Select(r => book.TenthsOf(r, book.Rolls)));
        Assert.Equal([503, 377], book.Rolls.Select(r => book.TenthsOf(r)));
    }

    [Fact]
    public void Files_of_frames_of_unknown_size_have_no_gigabytes()
    {
        var book = Delivered(new Deliver(default), Shot(100).Lab(services: "scan"));

        Assert.Equal((4000, null), (book.Files(book.Rolls).Frames, book.Files(book.Rolls).Gigabytes));
        Assert.Null(book.TenthsOf(book.Rolls[0], book.Rolls));
    }

    [Theory]
    [InlineData(DeliveredTakes.WholeRoll, 100)]
    [InlineData(DeliveredTakes.Good, 20)]
    [InlineData(DeliveredTakes.GoodAndHold, 30)]
    public void Selected_takes_are_scanned_and_nothing_between_them(DeliveredTakes takes, long feet)
    {
        var sheet = Of(At(100))
            .Take("1A/1", to: At(20))
            .Take("1A/2", to: At(30), mark: Mark.Hold)
            .Take("1A/3", to: At(90), mark: Mark.NoGood)
            .RunOff(At(100))
            .Unload()
            .Lab(services: "scan");

        var book = Delivered(_tenBit with { Takes = Written(takes) }, sheet);
        Assert.Equal(feet * 40, book.Files(book.Rolls).Frames);
    }

    [Fact]
    public void A_compressed_frame_fills_what_the_lab_says()
    {
        var book = Delivered(_tenBit with { FrameSize = Written(new Ratio(5, 1)) }, Shot(100).Lab(services: "scan"));

        Assert.Equal("20.0", book.Files(book.Rolls).Gigabytes?.ToText(1));
    }

    [Fact]
    public void Only_a_take_on_a_motor_needs_a_change_of_sound()
    {
        var at25 = _tenBit with { Rate = Written(new Speed(25)) };
        var onMotor = Sync(take => take with { Motor = Written("E1") });
        var onSpring = Sync(take => take);

        Assert.Equal(["25/24"], onMotor.Changes(onMotor.Rolls).Select(c => c.Ratio.ToString()));
        Assert.Empty(onSpring.Changes(onSpring.Rolls));

        DeliveryBook Sync(Func<Take, Take> also) =>
            Delivered(
                at25,
                Of(At(100)).Take("1A/1", to: At(98), also: take => also(take with { Sync = Written(true) })).Unload().Lab(services: "scan")
            );
    }

    [Fact]
    public void A_sound_roll_holds_until_another_is_named()
    {
        var strip = Of(At(100))
            .Take("1A/1", to: At(10), also: take => InSync(take) with { SoundRoll = Written("S1") })
            .Take("1A/2", to: At(20), also: InSync)
            .Take("1A/3", to: At(30))
            .Take("1A/4", to: At(40), also: take => InSync(take) with { SoundRoll = Written("S2") })
            .Strip();

        Assert.Equal(["S1", "S1", null, "S2"], strip.Layers.Select(l => l.SoundRoll));

        static Take InSync(Take take) => take with { Sync = Written(true), Motor = Written("E1") };
    }

    static DeliveryBook Delivered(Deliver? deliver, params Sheet[] sheets) => Books.Of(Ordered(deliver, sheets)).Delivery;

    static Production Ordered(Deliver? deliver, params Sheet[] sheets) =>
        PricedProduction.Of(sheets) with
        {
            Lab = new Lab(default) { Deliver = deliver },
        };
}
