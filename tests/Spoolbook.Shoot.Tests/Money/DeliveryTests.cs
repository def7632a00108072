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

    static DeliveryBook Delivered(Deliver deliver, params Sheet[] sheets) =>
        Books.Of(PricedProduction.Of(sheets) with { Lab = new Lab(default) { Deliver = deliver } }).Delivery;
}
