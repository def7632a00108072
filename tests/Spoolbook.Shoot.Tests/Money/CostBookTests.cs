using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Money;

public class CostBookTests
{
    [Fact]
    public void Stock_costs_what_came_whether_it_is_loaded_or_not()
    {
        var line = Of().Cost().Line(CostKind.Stock);
        Assert.Equal((CostStage.Bought, "N250-A", 154.00m), (line.Stage, line.Lot, line.Amount));
    }

    [Theory]
    [InlineData(100, "32.00", false)]
    [InlineData(79, "25.28", false)]
    [InlineData(78, "25.00", true)] // 24.96 by the foot
    [InlineData(30, "25.00", true)]
    public void Processing_is_by_the_foot_with_a_minimum_for_the_roll(long feet, string amount, bool atMinimum)
    {
        var line = Of(Shot(feet)).Cost().Line(CostKind.Process);
        Assert.Equal((amount, atMinimum), (line.Amount?.ToString(System.Globalization.CultureInfo.InvariantCulture), line.AtMinimum));
    }

    [Fact]
    public void A_short_end_that_is_kept_is_not_processed()
    {
        var line = Of(Sheet.Of(At(100)).FromUnit(1).Take("7B/1", At(90)).Unload()).Cost().Line(CostKind.Process);
        Assert.Equal((At(90), 28.80m), (line.Film, line.Amount));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(-1, 1)]
    [InlineData(0.5, 1)]
    [InlineData(1.25, 2)]
    [InlineData(2, 2)]
    public void Pushing_and_pulling_cost_the_same_and_part_of_a_stop_counts_as_one(double push, int stops)
    {
        var line = Of(Shot(100).Lab(push: push)).Cost().Line(CostKind.Push);
        Assert.Equal((Ratio)stops, line.Quantity);
        Assert.Equal(stops * 12.00m, line.Amount);
    }

    // 100 ft at 0.32 are 32.00, and 30 ft 25.00 at the minimum; a quarter of that for each stop. Common practice.
    [Theory]
    [InlineData(100, 1, "8.00")]
    [InlineData(100, 2, "16.00")]
    [InlineData(30, 1, "6.25")]
    public void A_push_priced_in_per_cent_is_a_part_of_what_the_process_costs(long feet, double push, string amount)
    {
        var rates = Full with { PushPerStop = Written(new PushRate(null, 0.25m)) };
        var line = (Of(Shot(feet).Lab(push: push)) with { Rates = rates }).Cost().Line(CostKind.Push);
        Assert.Equal(amount, line.Amount?.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void A_push_in_per_cent_of_a_process_without_a_price_is_open()
    {
        var rates = Full with { Processes = [], PushPerStop = Written(new PushRate(null, 0.25m)) };
        var line = (Of(Shot(100).Lab(push: 1)) with { Rates = rates }).Cost().Line(CostKind.Push);
        Assert.Equal((null, OpenReason.NoRate), (line.Amount, line.Open));
    }

    [Fact]
    public void Scanning_by_the_hour_goes_by_the_time_that_the_film_runs()
    {
        // 100 ft of 16 mm are 4000 frames: 166 2/3 s at 24, at 320 an hour 14.81.
        var hourly = Full with { Scan = null, ScanPerHour = Written(320m) };
        var line = (Of(Shot(100).Lab(services: "scan")) with { Rates = hourly }).Cost().Line(CostKind.Scan);
        Assert.Equal((CostUnit.Hour, new Ratio(500, 3 * 3600), 14.81m), (line.Unit, line.Quantity, line.Amount));
        Assert.Equal(
            CostUnit.Foot,
            (Of(Shot(100).Lab(services: "scan")) with { Rates = Full with { ScanPerHour = Written(320m) } }).Cost().Line(CostKind.Scan).Unit
        );
    }

    [Fact]
    public void A_lab_that_bills_by_the_metre_is_paid_by_the_metre()
    {
        // 100 ft are 30.48 m, exact (international foot of 0.3048 m, NIST SP 811): at invented prices of 1.05, 1.48 and 1.97
        // a metre 32.004, 45.1104 and 60.0456.
        var rates = Full with
        {
            Processes = [new ProcessRate(default, Written("ecn-2"), ByMetre(1.05m), Written(25m))],
            Scan = ByMetre(1.48m),
            Workprint = ByMetre(1.97m),
        };
        var cost = (Of(Shot(100).Lab(services: ["scan", "workprint"])) with { Rates = rates }).Cost();
        Assert.Equal(
            (CostUnit.Metre, new Ratio(3048, 100), 32.00m),
            (cost.Line(CostKind.Process).Unit, cost.Line(CostKind.Process).Quantity, cost.Line(CostKind.Process).Amount)
        );
        Assert.Equal(45.11m, cost.Line(CostKind.Scan).Amount);
        Assert.Equal(60.05m, cost.Line(CostKind.Workprint).Amount);
    }

    [Theory]
    [InlineData(LengthUnit.Feet, CostUnit.Foot)]
    [InlineData(LengthUnit.Metres, CostUnit.Metre)]
    public void What_has_no_price_yet_is_asked_for_in_the_houses_own_unit(LengthUnit house, CostUnit asked) =>
        Assert.Equal(asked, (Of(Shot(100)) with { Rates = null, Units = house }).Cost().Line(CostKind.Process).Unit);

    [Fact]
    public void Tax_on_nothing_is_no_price()
    {
        var taxed = SmallProduction.Of(Shot(100)) with
        {
            Rates = new Rates(default) { Currency = Written("EUR"), Tax = Written(0.19m) },
        };
        Assert.Equal(0.00m, taxed.Cost().Line(CostKind.Tax).Amount);
        Assert.False(taxed.Cost().IsPriced);
        Assert.True(Of(Shot(100)).Cost().IsPriced);
    }

    [Fact]
    public void A_roll_that_is_not_pushed_has_no_line_for_it() =>
        Assert.DoesNotContain(Of(Shot(100).Lab(push: 0)).Cost().Lines, l => l.Kind == CostKind.Push);

    [Fact]
    public void A_rolls_own_services_replace_the_labs()
    {
        var lab = new Lab(default) { Services = [Written("prep"), Written("scan")] };
        var cost = (Of(Shot(100), Shot(100, "R02", 2).Lab(services: "workprint")) with { Lab = lab }).Cost();
        Assert.Equal(
            [("R01", CostKind.Prep, 8.00m), ("R01", CostKind.Scan, 45.00m), ("R02", CostKind.Workprint, 60.00m)],
            cost.Order.Where(l => l.Kind is CostKind.Prep or CostKind.Scan or CostKind.Workprint)
                .Select(l => (l.Roll!, l.Kind, l.Amount!.Value))
        );
    }

    [Theory]
    [InlineData("0.125", "0.13")]
    [InlineData("0.135", "0.14")]
    [InlineData("-0.125", "-0.13")]
    [InlineData("0.1249999", "0.12")]
    [InlineData("2.5", "2.50")]
    public void A_half_cent_is_rounded_away_from_zero(string exact, string cents)
    {
        var invariant = System.Globalization.CultureInfo.InvariantCulture;
        Assert.Equal(cents, CostBook.ToCents(Ratio.FromDecimal(decimal.Parse(exact, invariant)))?.ToString(invariant));
    }

    [Fact]
    public void Tax_is_on_the_labs_lines_and_shipping_and_not_on_stock()
    {
        var cost = Of(Shot(100)).Cost();
        Assert.Equal(50.00m, cost.OrderBeforeTax);
        Assert.Equal(9.50m, cost.Line(CostKind.Tax).Amount);
        Assert.Equal((59.50m, 213.50m), (cost.OrderTotal, cost.ToDate));
    }

    [Fact]
    public void A_roll_in_the_camera_is_committed_and_not_on_the_order()
    {
        var cost = Of(Shot(100), Sheet.Of(At(100), "R02").FromUnit(2).Take("8/1", At(50))).Cost();
        Assert.Equal(["R02"], cost.At(CostStage.Committed).Select(l => l.Roll).OfType<string>().Distinct());
        Assert.Equal(29.75m, cost.TotalAt(CostStage.Committed)); // the minimum of 25.00 and its tax; the box is on the order
    }

    [Fact]
    public void A_roll_threaded_and_not_run_yet_commits_nothing() =>
        Assert.Empty(Of(Shot(100), Sheet.Of(At(100), "R02").FromUnit(2)).Cost().At(CostStage.Committed));

    [Fact]
    public void A_roll_in_the_camera_can_go_with_a_box_that_waits_while_another_is_gone()
    {
        var cost = Of(
                Shot(100).Lab(sent: new DateOnly(2026, 10, 5)),
                Shot(100, "R02", 2),
                Sheet.Of(At(100), "R03").FromUnit(3).Take("8/1", At(50))
            )
            .Cost();
        Assert.Equal([CostKind.Process, CostKind.Tax], cost.At(CostStage.Committed).Select(l => l.Kind));
    }

    // 32.00 for the roll and 18.00 for the box, and 9.50 of tax: each consignment comes to 59.50. Four cans came for 154.00.
    [Fact]
    public void What_waits_for_its_box_is_ordered_and_not_spent()
    {
        var cost = Of(Shot(100).Lab(sent: new DateOnly(2026, 10, 5)), Shot(100, "R02", 2)).Cost();
        Assert.Equal((119.00m, 59.50m), (cost.OrderTotal, cost.OrderNotSent));
        Assert.Equal((273.00m, 213.50m), (cost.ToDate, cost.Spent));
    }

    [Fact]
    public void What_is_not_sent_has_no_price_where_nothing_waits_or_no_rate_is_written()
    {
        var gone = Of(Shot(100).Lab(sent: new DateOnly(2026, 10, 5))).Cost();
        Assert.Equal((null, 213.50m), (gone.OrderNotSent, gone.Spent));
        Assert.Null(SmallProduction.Of(Shot(100)).Cost().OrderNotSent);
    }

    [Fact]
    public void A_roll_is_billed_with_its_consignment_and_one_in_the_camera_with_none()
    {
        var books = Books.Of(Of(Shot(100), Sheet.Of(At(100), "R02").FromUnit(2).Take("8/1", At(50))));
        Assert.Equal([1, null], books.Shoot.Rolls.Select(r => books.Cost.SendingOf(r)?.Number));
    }

    [Fact]
    public void A_minimum_for_the_order_is_paid_once_by_a_production_that_sends_it_alone()
    {
        // 30 + 40 ft at 0.32 are 22.40, under the minimum of 25; 100 + 100 ft are 64.00.
        var order = Full with { MinimumPer = Written(MinimumPer.Order) };
        var small = (Of(Shot(30), Shot(40, "R02", 2)) with { Rates = order }).Cost().Line(CostKind.Process);
        Assert.Equal((new Ratio(70, 1), At(70), 25.00m, true), (small.Quantity, small.Film, small.Amount, small.AtMinimum));

        var large = (Of(Shot(100), Shot(100, "R02", 2)) with { Rates = order }).Cost().Line(CostKind.Process);
        Assert.Equal((new Ratio(200, 1), 64.00m, false), (large.Quantity, large.Amount, large.AtMinimum));
    }

    [Fact]
    public void Each_process_of_a_production_has_a_minimum_of_its_own_or_none()
    {
        // Both at the minimum alone; 50 ft at 0.50 are 25.00, and that process has none.
        var rates = Full with
        {
            MinimumPer = Written(MinimumPer.Production),
            Processes = [Process("ecn-2", 0.32m, 25m), Process("bw-negative", 0.30m, 20m), Process("bw-reversal", 0.50m, null)],
        };
        var cost = (
            Of(
                Shot(30).Lab(services: "scan"),
                Shot(40, "R02", 2).Lab("bw-negative"),
                Shot(50, "R03", 3).Lab("bw-reversal"),
                Shot(20, "R04", 4)
            ) with
            {
                Rates = rates,
            }
        ).Cost();
        Assert.Equal(
            [("ecn-2", 50, 25.00m), ("bw-negative", 40, 20.00m), ("bw-reversal", 50, 25.00m)],
            cost.Lines.Where(l => l.Kind == CostKind.Process).Select(l => (l.Name!, (int)l.Quantity.ToDouble(), l.Amount!.Value))
        );
        Assert.Equal("R01", cost.Line(CostKind.Scan).Roll);
    }

    [Fact]
    public void An_order_with_a_price_in_every_line_is_not_open() => Assert.False(Of(Shot(100)).Cost().OrderIsOpen);

    [Fact]
    public void A_line_costs_at_most_what_a_spreadsheet_holds_to_the_cent()
    {
        var most = Ratio.FromDecimal(CostBook.Most);
        Assert.Equal((CostBook.Most, -CostBook.Most), (CostBook.ToCents(most), CostBook.ToCents(-most)));
        Assert.Null(CostBook.ToCents(most + new Ratio(1, 1000)));
        Assert.Null(CostBook.ToCents(-most - new Ratio(1, 1000)));
    }

    [Fact]
    public void A_roll_held_back_and_a_dummy_roll_cost_no_lab_work()
    {
        var cost = Of(Shot(100).Lab(send: false), Shot(100, "P1", 2).ForPractice()).Cost();
        Assert.All(cost.Lines, l => Assert.Equal(CostStage.Bought, l.Stage));
    }

    [Fact]
    public void A_rate_that_is_missing_leaves_the_line_open_and_never_free()
    {
        var cost = (Of(Shot(100).Lab(push: 1)) with { Rates = Full with { PushPerStop = null } }).Cost();
        var open = Assert.Single(cost.Open);
        Assert.Equal((CostKind.Push, OpenReason.NoRate, null), (open.Kind, open.Open, open.Amount));
        Assert.True(cost.OrderIsOpen);
    }

    [Fact]
    public void Without_any_rate_every_line_is_named_and_open()
    {
        var cost = SmallProduction.Of(Shot(100)).Cost();
        Assert.Null(cost.Currency);
        Assert.Equal([CostKind.Stock, CostKind.Process, CostKind.Shipping, CostKind.Tax], cost.Open.Select(l => l.Kind));
        Assert.Equal(0m, cost.Total);
    }

    [Fact]
    public void A_service_that_no_rate_is_for_is_open()
    {
        var line = Of(Shot(100).Lab(services: "ultrasonic clean")).Cost().Line(CostKind.Service);
        Assert.Equal(("ultrasonic clean", null), (line.Name, line.Amount));
    }

    [Fact]
    public void A_roll_of_an_unknown_process_is_open()
    {
        var production = Of(Sheet.Of(At(100)).FromUnit(1, "NONE").Take("7B/1", At(100)).Unload());
        Assert.Equal(OpenReason.NoProcess, production.Cost().Line(CostKind.Process).Open);
    }

    [Fact]
    public void A_price_with_a_row_of_noughts_too_many_is_open_and_breaks_nothing()
    {
        var cost = (Of(Shot(100)) with { Rates = Full with { Shipping = Written(decimal.MaxValue) } }).Cost();
        Assert.Equal(OpenReason.OutOfRange, cost.Line(CostKind.Shipping).Open);
    }
}
