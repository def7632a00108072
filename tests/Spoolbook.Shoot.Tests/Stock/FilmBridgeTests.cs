using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

// A foot is 30.48 cm, exact (international foot of 0.3048 m, NIST SP 811).
public class FilmBridgeTests
{
    [Fact]
    public void Ends_thrown_away_are_those_of_re_cans_and_of_cuts()
    {
        // 4 ft off a can that was opened; 38 ft of a short end cut into 20 and 15, with 3 in the bin: 7 ft are 213.36 cm.
        var shot = Of(At(100)).AsTheCanSays().FromUnit(1).LoadedOn(Friday).Take("1A/1", At(62)).Unload().OutOn(Friday);
        var bridge = BridgeOf(
            SmallProduction.Of(shot) with
            {
                StockLog =
                [
                    new StockRecanned(Nowhere)
                    {
                        On = On(Friday),
                        Lot = Written("N250-A"),
                        Units = [Written(2)],
                        Off = Written(At(4)),
                    },
                    new StockSplit(Nowhere) { On = On(Saturday), ShortEndOf = Written("R01"), Into = [Written(At(20)), Written(At(15))] },
                ],
            }
        );

        Assert.Equal((At(7), 213), Part(bridge.At(FilmPlace.ThrownAway)));
        Assert.Equal((At(35), 1067), Part(bridge.At(FilmPlace.ShortEnds)));
        Assert.Equal((At(296), 9022), Part(bridge.At(FilmPlace.Unopened)));
        Assert.Equal((At(62), 1890), Part(bridge.At(FilmPlace.Good)));
        Assert.Equal(At(400), bridge.All);
    }

    [Fact]
    public void Practice_takes_all_of_its_rolls_and_what_is_left_of_its_lots()
    {
        // One dummy of two was threaded: 200 ft, 6096 cm.
        var dummy = Of(At(100), "P1").FromUnit(1, "DUMMY").ForPractice().Take("1/1", At(50)).Unload();
        var small = SmallProduction.Of(dummy);
        var practice = SmallProduction.Lot with { Name = Written("DUMMY"), Practice = Written(true), Units = Written(2) };
        var bridge = BridgeOf(small with { Lots = [.. small.Lots, practice] });

        Assert.Equal((At(200), 6096), Part(bridge.At(FilmPlace.Practice)));
        Assert.Equal((At(200), 6096), Part(bridge.Of(FilmOrigin.BoughtForPractice)));
        Assert.Equal((At(400), 12192), Part(bridge.Of(FilmOrigin.Bought)));
        Assert.Equal((At(600), 18288), (bridge.All, bridge.Centimetres));
    }

    [Theory]
    [InlineData(FilmPlace.Lost, 1)]
    [InlineData(FilmPlace.Damaged, 2)]
    [InlineData(FilmPlace.SentAway, 3)]
    public void What_is_gone_is_where_the_log_says(FilmPlace place, int units)
    {
        StockEntry entry = place switch
        {
            FilmPlace.Lost => new StockLost(Nowhere) { On = On(Friday) },
            FilmPlace.Damaged => new StockDamaged(Nowhere) { On = On(Friday) },
            _ => new StockSentAway(Nowhere) { On = On(Friday) },
        };
        var bridge = BridgeOf(
            SmallProduction.Of() with
            {
                StockLog = [entry with { Lot = Written("N250-A"), Units = [.. Enumerable.Range(1, units).Select(Written)] }],
            }
        );

        Assert.Equal((At(100 * units), 3048 * units), Part(bridge.At(place)));
        Assert.Equal(At(400 - (100 * units)), bridge.At(FilmPlace.Unopened).Film);
    }

    static Located<StockTime> On(DateOnly day) => Written(new StockTime(day, null));

    static (Footage Film, long Centimetres) Part<TWhat>(BridgePart<TWhat> part) => (part.Film, part.Centimetres);

    static FilmBridge BridgeOf(Production production) => Books.Of(production).Bridge;
}
