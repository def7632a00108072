using Spoolbook.Film;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Shipments.SmallSchool;

namespace Spoolbook.Shoot.Tests.Shipments;

public class ShipmentPlanTests
{
    static IEnumerable<string> CansOf(ShipmentPlan plan) =>
        plan.Shipments.SelectMany(s => s.Cans).Select(c => $"{c.Production.Folder} {c.Roll.Roll.Name.Value}");

    static SchoolProduction In(string folder, SchoolProduction production) => production with { Folder = folder };

    [Fact]
    public void Cans_are_packed_by_process_gauge_push_and_production_and_what_is_not_pushed_comes_first()
    {
        var wide = Production("ALDER", Shot(100, "R01"), Shot(100, "R02", 2)).With(p => p with { Gauge = Gauge.Super16 });
        var ferry = Production(
            "FERRY",
            Shot(100, "R01").Lab("ecn-2", push: 1),
            Shot(100, "R02", 2).Lab("ecn-2", push: -1),
            Shot(100, "R03", 3).Lab("ecn-2"),
            Shot(100, "R04", 4).Lab("bw-reversal")
        );
        var plan = Plan(wide, Production("HERON"), In("b/ferry", ferry), In("a/ferry", Production("FERRY", Shot(100, "R09"))));
        Assert.Equal(
            [
                "b/ferry R04",
                "a/ferry R09",
                "b/ferry R03",
                "heron R01",
                "b/ferry R02",
                "b/ferry R01",
                "alder R01",
                "alder R02",
            ],
            CansOf(plan)
        );
        Assert.Equal(["alder", "a/ferry", "b/ferry", "heron"], plan.Shipments.Single().Productions.Select(p => p.Folder));
    }

    [Fact]
    public void Productions_with_one_code_are_in_the_order_of_their_folders()
    {
        // At equal codes the packing order of the first cans would have b before a: its process comes first.
        var b = In("b", Production("FERRY", Shot(100).Lab("bw-reversal")));
        var a = In("a", Production("FERRY", Shot(100, "R02").Lab("ecn-2")));
        Assert.Equal(["a", "b"], Plan(b, a).Shipments.Single().Productions.Select(p => p.Folder));
    }

    [Fact]
    public void A_consignments_film_is_that_of_all_its_cans() =>
        Assert.Equal(175, Plan(Production("HERON", Shot(100), Shot(50, "R02", 2)), Production("FERRY", Shot(25))).Shipments[0].Feet);

    [Fact]
    public void A_consignment_is_back_when_the_slowest_of_its_orders_is()
    {
        SchoolProduction Days(string code, int days) => Production(code).WithLab(l => l with { Days = Written(days) });
        // Friday, 16 October, and twelve days.
        Assert.Equal(new DateOnly(2026, 10, 28), Plan(Days("HERON", 12), Days("FERRY", 10), Production("GULL")).Shipments[0].BackBy);
        Assert.Null(Plan(Production("GULL")).Shipments[0].BackBy);
    }

    [Fact]
    public void Each_lab_gets_a_consignment_by_the_alphabet_and_is_named_once()
    {
        SchoolProduction[] school =
        [
            Production("HERON").SendsTo("Harbour Film Lab"),
            Production("FERRY").SendsTo("HARBOUR film-lab"),
            Production("GULL").SendsTo("Brackwater"),
            Production("TERN").WithLab(_ => null),
        ];
        Assert.Equal(
            ["2026-10-16-brackwater", "2026-10-16-harbour-film-lab"],
            Plan(school).Shipments.Select(s => s.Id)
        );
        Assert.Equal(["Brackwater", "Harbour Film Lab"], Plan(school).Labs.AsEnumerable());

        // Asked for one lab, however its name is typed, the other waits.
        var one = ShipmentPlan.Make(school, [], Friday with { Lab = "harbour filmlab" });
        Assert.Equal(["ferry R01", "heron R01"], CansOf(one));
        Assert.Equal(["Brackwater", "Harbour Film Lab"], one.Labs.AsEnumerable());
    }

    [Fact]
    public void A_second_consignment_to_a_lab_on_one_day_gets_a_number()
    {
        string Id(ShipmentWishes wishes, params ShipmentRecord[] earlier) =>
            ShipmentPlan.Make([Production("HERON", Shot(50, "R07"))], earlier, wishes).Shipments.Single().Id;
        var first = Record(Production("FERRY"));

        Assert.Equal("2026-10-16-harbour-film-lab", Id(Friday));
        Assert.Equal("2026-10-16-harbour-film-lab-2", Id(Friday, first));
        Assert.Equal("2026-10-16-harbour-film-lab-2", Id(Friday with { Taken = ["2026-10-16-Harbour-Film-Lab"] }));
        Assert.Equal("2026-10-16-harbour-film-lab-3", Id(Friday with { Taken = ["2026-10-16-harbour-film-lab-2"] }, first));
        Assert.Equal("2026-10-17-harbour-film-lab", Id(Friday with { SentOn = new DateOnly(2026, 10, 17) }, first));
    }

    [Fact]
    public void Rolls_that_went_before_are_counted_whoever_wrote_it()
    {
        var heron = Production("HERON", Shot(100, "R01"), Shot(100, "R02", 2).Lab(sent: new DateOnly(2026, 10, 9)), Shot(100, "R03", 3));
        Assert.Equal(1, Plan(heron).WentBefore);

        var plan = ShipmentPlan.Make([heron, Production("FERRY")], [Record(heron)], Friday);
        Assert.Equal(3, plan.WentBefore);
        Assert.Equal(["ferry R01"], CansOf(plan));
    }

    // By name, as a theory takes no sheet.
    static readonly Dictionary<string, Sheet> Rolls = new()
    {
        ["half shot, in the camera"] = Sheet.Of(At(100)).FromUnit(1).Take("7B/1", At(50)),
        ["loaded, nothing run"] = Sheet.Of(At(100)).FromUnit(1),
        ["in the camera, to be held back"] = Sheet.Of(At(100)).FromUnit(1).Take("7B/1", At(50)).Lab(send: false),
        ["held back"] = Shot(100).Lab(send: false),
        ["threaded and taken out"] = Sheet.Of(At(100)).FromUnit(1).Head(At(4)).Unload(),
        ["a dummy roll"] = Shot(100).ForPractice(),
    };

    [Theory]
    [InlineData("half shot, in the camera", LeftOutReason.InCamera)]
    [InlineData("loaded, nothing run", null)]
    [InlineData("in the camera, to be held back", LeftOutReason.HeldBack)]
    [InlineData("held back", LeftOutReason.HeldBack)]
    [InlineData("threaded and taken out", null)]
    [InlineData("a dummy roll", null)]
    public void Exposed_film_that_stays_is_listed_and_raw_stock_is_not(string roll, LeftOutReason? reason)
    {
        var plan = Plan(Production("HERON", Rolls[roll]));
        Assert.Empty(plan.Shipments);
        Assert.Equal(reason is { } why ? [why] : [], plan.LeftOut.Select(l => l.Reason));
    }

    [Fact]
    public void A_can_with_nothing_shot_on_it_that_is_sent_all_the_same_stays_where_others_stay()
    {
        // A test of the stock, say: nothing is exposed on it, and its sheet says `send: yes`.
        var heron = Production("HERON", Sheet.Of(At(100)).FromUnit(1).Unload().Lab(send: true));
        Assert.Equal(["heron R01"], CansOf(Plan(heron)));
        Assert.Equal([LeftOutReason.NoLab], Plan(heron.WithLab(_ => null)).LeftOut.Select(l => l.Reason));

        var without = ShipmentPlan.Make([heron], [], Friday with { Without = new HashSet<string> { "heron" } });
        Assert.Empty(without.Shipments);
        Assert.Equal([LeftOutReason.Without], without.LeftOut.Select(l => l.Reason));
    }

    [Fact]
    public void A_production_that_stays_here_says_so_before_it_says_that_it_has_no_lab()
    {
        var plan = ShipmentPlan.Make(
            [Production("HERON").WithLab(l => l with { Name = null }), Production("FERRY")],
            [],
            Friday with { Without = new HashSet<string> { "heron" } }
        );
        Assert.Equal([LeftOutReason.Without], plan.LeftOut.Select(l => l.Reason));
        Assert.Equal(["ferry R01"], CansOf(plan));
    }
}
