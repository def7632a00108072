using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Money;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Shipments.SmallSchool;

namespace Spoolbook.Shoot.Tests.Shipments;

public class ShipmentFaultTests
{
    static SchoolProduction Production(string code, string roll) => SmallSchool.Production(code, PricedProduction.Shot(100, roll));

    static ShipmentPlan Plan(params SchoolProduction[] school) => SmallSchool.Plan(school);

    static ShipmentPlan Plan(IReadOnlyList<ShipmentRecord> earlier, params SchoolProduction[] school) =>
        ShipmentPlan.Make(school, earlier, Friday);

    [Fact]
    public void Two_sound_productions_go_without_a_word() =>
        Assert.Empty(Plan(Production("HERON", "R01"), Production("FERRY", "R01")).Faults);

    [Theory]
    [InlineData("HERON", "her-on")]
    [InlineData("HER", "HERO", "ON1", "N1")]
    public void Cans_that_read_alike_stop_a_consignment(string one, string other, string oneRoll = "R01", string otherRoll = "R02") =>
        Assert.True(Plan(Production(one, oneRoll), Production(other, otherRoll)).HasErrors);

    [Fact]
    public void A_code_that_another_production_shipped_under_is_no_reason_to_leave_a_roll_here_in_silence()
    {
        var before = AnySchool.RecordOf(Plan(Production("HERON", "R01")).Shipments[0]);
        var other = Production("HERON", "R01") with { Folder = "next-term/heron" };
        var renamed = other with { Books = Books.Of(other.Books.Production with { Title = Written("Another Heron") }) };

        Assert.Empty(Plan([before], other).Faults);
        Assert.Contains("went on 2026-10-16 already", Assert.Single(Plan([before], renamed).Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_production_without_a_lab_keeps_its_rolls_here()
    {
        var plan = Plan(Production("HERON", "R01").WithLab(l => l with { Name = null }));

        Assert.Empty(plan.Shipments);
        Assert.Equal(LeftOutReason.NoLab, Assert.Single(plan.LeftOut).Reason);
    }

    [Theory]
    [InlineData("", "production.yaml", "spoolbook check .")]
    [InlineData("first-year/heron", "first-year/heron/production.yaml", "spoolbook check first-year/heron")]
    public void A_production_that_cannot_be_read_is_named_by_its_folder(string folder, string file, string command)
    {
        var fault = ShipmentFaults.Unreadable(folder);
        Assert.Equal(file, fault.Place.File);
        Assert.Contains($"`{command}`", fault.Help, StringComparison.Ordinal);
    }

    static SchoolProduction WithErrors(params Sheet[] rolls) => SmallSchool.Production("HERON", rolls) with { HasErrors = true };

    [Fact]
    public void Errors_of_a_production_stop_it_while_one_of_its_rolls_waits()
    {
        var fault = Plan(WithErrors(PricedProduction.Shot(100, "R01").Lab(sent: Friday.SentOn), PricedProduction.Shot(100, "R02", 2)))
            .Only(ShipmentChecks.ProductionWithErrors);
        Assert.Equal(
            (Level.Error, "Production HERON has errors", "heron/production.yaml"),
            (fault.Level, fault.Message, fault.Place.File)
        );

        var untitled = WithErrors().With(p => p with { Title = Written("") });
        Assert.Equal("heron has errors", Plan(untitled).Only(ShipmentChecks.ProductionWithErrors).Message);

        // The same roll again, which a record says went.
        Assert.Empty(Plan([Record(SmallSchool.Production("HERON"))], WithErrors()).Faults);
        Assert.Empty(ShipmentPlan.Make([WithErrors()], [], Friday with { Without = new HashSet<string> { "heron" } }).Faults);
    }

    [Fact]
    public void Errors_of_a_production_that_has_nothing_to_send_stop_no_other()
    {
        Assert.Empty(Plan(WithErrors(PricedProduction.Shot(100).Lab(sent: Friday.SentOn)), Production("FERRY", "R01")).Faults);
        Assert.Empty(Plan(WithErrors(PricedProduction.Shot(100).Lab(send: false))).Faults);
        Assert.Empty(Plan(WithErrors(Sheet.Of(At(100)).FromUnit(1).Take("7B/1", At(50)))).Faults);

        // Among what could not be read may be a roll that waits.
        var unread = WithErrors(PricedProduction.Shot(100).Lab(sent: Friday.SentOn)).With(p => p with { Unread = [Part.Rolls] });
        Plan(unread).Only(ShipmentChecks.ProductionWithErrors);
    }

    [Fact]
    public void Two_productions_with_one_code_stop_each_consignment_that_one_of_them_is_in()
    {
        var (one, other) = (Production("HERON", "R01"), Production("her-on", "R02"));
        var fault = Plan(one, Production("FERRY", "R01"), other, Production("GULL", "R01").SendsTo("Brackwater"))
            .Only(ShipmentChecks.SameCode);
        Assert.Equal("The code her-on of Production her-on is also that of Production HERON", fault.Message);
        Assert.Equal(("her-on/rolls/r01.yaml", Level.Error), (fault.Place.File, fault.Level));
        Assert.Equal(["heron/rolls/r01.yaml"], fault.Others.Select(o => o.Place.File));

        // The can that both have is named as its label has it.
        var can = new CanCode("her-on", "R01");
        Assert.EndsWith(
            $", and both have a can {can}",
            Plan(one, Production("her-on", "R01")).Only(ShipmentChecks.SameCode).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Two_productions_with_one_code_whose_film_is_gone_stop_nobody_and_neither_does_one_that_stays_here()
    {
        SchoolProduction Gone(string code) => SmallSchool.Production(code, PricedProduction.Shot(100).Lab(sent: new DateOnly(2026, 10, 2)));
        Assert.Empty(Plan(Gone("HERON"), Gone("her-on"), Production("FERRY", "R01")).Faults);

        // Once a roll of either waits, they do.
        Plan(Gone("HERON"), Production("her-on", "R02")).Only(ShipmentChecks.SameCode);
        Plan(Production("HERON", "R02"), Gone("her-on")).Only(ShipmentChecks.SameCode);
        Assert.Empty(
            ShipmentPlan
                .Make(
                    [Production("HERON", "R01"), Production("her-on", "R02")],
                    [],
                    Friday with { Without = new HashSet<string> { "heron" } }
                )
                .Faults
        );
    }

    [Fact]
    public void A_can_that_reads_as_another_does_names_both()
    {
        // HER and ON1, HERO and N1: read aloud they are one code.
        var fault = Plan(Production("HER", "ON1"), Production("HERO", "N1")).Only(ShipmentChecks.ReadsAlike);
        Assert.Equal(("HERO/N1", "HER/ON1"), (fault.Message[..7], fault.Others.Single().Message[..7]));
        Assert.Equal(("N1", "hero/rolls/r01.yaml", "her/rolls/r01.yaml"), (fault.Roll, fault.Place.File, fault.Others[0].Place.File));
    }

    [Fact]
    public void A_lab_that_does_not_run_a_process_is_named_with_all_cans_of_it()
    {
        var knows = Production("HERON", "R01").WithLab(l => l with { Processes = [Written("ECN 2"), Written("bw-neg")] });
        var asks = SmallSchool.Production(
            "FERRY",
            PricedProduction.Shot(100, "R01").Lab("e-6"),
            PricedProduction.Shot(100, "R02", 2),
            PricedProduction.Shot(100, "R03", 3).Lab("e-6")
        );
        var fault = Plan(knows, asks).Only(ShipmentChecks.ProcessNotRun);
        var (first, second) = (new CanCode("FERRY", "R01"), new CanCode("FERRY", "R03"));
        Assert.Equal($"Harbour Film Lab does not run e-6: {first}, {second}", fault.Message);
        Assert.Equal("HERON writes what Harbour Film Lab runs", fault.Others.Single().Message);

        // Nobody writes what the lab runs: then nobody knows better. Who writes it has its own check.
        Assert.Empty(Plan(Production("HERON", "R01"), asks).Faults);
        Assert.Empty(Plan(knows, asks.WithLab(l => l with { Processes = [Written("ecn-2")] })).Faults);
    }

    [Fact]
    public void A_can_without_a_process_is_asked_about_once()
    {
        var knows = Production("HERON", "R01").WithLab(l => l with { Processes = [Written("ecn-2")] });
        var fault = Assert.Single(Plan(knows, Production("FERRY", "R01").With(p => p with { Lots = [] })).Faults);
        Assert.Equal((ShipmentChecks.NoProcess, "R01"), (fault.Check, fault.Roll));
    }

    [Fact]
    public void Two_productions_with_one_title_are_told_apart_by_a_word_more()
    {
        SchoolProduction Titled(string code, string title) => Production(code, "R01").With(p => p with { Title = Written(title) });
        var fault = Assert.Single(Plan(Titled("HERON", "Night Ferry"), Titled("GULL", "Nightferry"), Titled("ALDER", "The Heron")).Faults);
        // By code, GULL is the first of the two.
        Assert.Equal("HERON has the title of GULL, 'Night Ferry'", fault.Message);
        Assert.Equal((ShipmentChecks.SameTitle, Level.Warning), (fault.Check, fault.Level));
        Assert.Equal(["gull/rolls/r01.yaml"], fault.Others.Select(o => o.Place.File));
        Assert.NotEmpty(fault.Help);
    }

    [Fact]
    public void Errors_come_before_warnings_whatever_the_lab()
    {
        // Brackwater's consignment, the first, has two of one title; a can to the Harbour Film Lab has no process.
        SchoolProduction Night(string code) =>
            Production(code, "R01").SendsTo("Brackwater").With(p => p with { Title = Written("Night Ferry") });
        var plan = Plan(Night("GULL"), Night("TERN"), Production("HERON", "R01").With(p => p with { Lots = [] }));
        Assert.Equal([ShipmentChecks.NoProcess, ShipmentChecks.SameTitle], plan.Faults.Select(f => f.Check));
        Assert.True(plan.HasErrors);
        Assert.False(Plan(Night("GULL"), Night("TERN")).HasErrors);
    }

    static Rates Other(Rates rates, string key) =>
        key switch
        {
            "currency" => rates with { Currency = Written("CHF") },
            "shipping" => rates with { Shipping = Written(18.5m) },
            "tax" => rates with { Tax = Written(0.07m) },
            _ => rates with { MinimumPer = Written(MinimumPer.Order) },
        };

    [Theory]
    [InlineData("currency", "so the cost stays open")]
    [InlineData("shipping", "that of FERRY counts")]
    [InlineData("tax", "that of FERRY counts")]
    [InlineData("minimum-per", "that of FERRY counts")]
    public void Two_prices_of_one_lab_are_flagged_and_the_first_counts(string key, string help)
    {
        static Rates Written(Rates rates) => rates with { MinimumPer = Sheet.Written(MinimumPer.Roll) };
        var ferry = Production("FERRY", "R01").Priced(Written);
        var heron = Production("HERON", "R01").Priced(r => Other(Written(r), key));
        // ALDER has the first code, and no prices.
        var fault = Assert.Single(Plan(heron, ferry, Production("ALDER", "R01")).Faults);
        Assert.Equal($"HERON and FERRY write `{key}:` of Harbour Film Lab differently", fault.Message);
        Assert.Equal((ShipmentChecks.PricesDiffer, Level.Warning), (fault.Check, fault.Level));
        Assert.Equal("heron/rolls/r01.yaml", fault.Place.File);
        Assert.Equal(["ferry/rolls/r01.yaml"], fault.Others.Select(o => o.Place.File));
        Assert.Contains(help, fault.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_that_only_one_writes_or_with_cents_more_written_is_no_other_price()
    {
        var ferry = Production("FERRY", "R01").Priced();
        Assert.Empty(Plan(ferry, Production("HERON", "R01").Priced()).Faults);
        Assert.Empty(Plan(ferry, Production("HERON", "R01").Priced(r => r with { Shipping = null, Tax = null })).Faults);
        Assert.Empty(
            Plan(ferry, Production("HERON", "R01").Priced(r => r with { Shipping = Written(18.00m), Tax = Written(0.190m) })).Faults
        );
    }

    [Fact]
    public void Two_addresses_of_one_lab_are_flagged_and_one_written_in_another_way_is_not()
    {
        SchoolProduction At(string code, params string[] lines) =>
            Production(code, "R01").WithLab(l => l with { Address = [.. lines.Select(Written)] });
        var (ferry, gull, heron) = (At("FERRY", "Quay 4", "Harbour"), At("GULL", "QUAY 4, Harbour"), At("HERON", "Quay 5", "Harbour"));
        Assert.Empty(Plan(ferry, gull, At("ALDER")).Faults);

        var fault = Assert.Single(Plan(heron, gull, ferry, At("ALDER")).Faults);
        Assert.Equal("HERON and FERRY write different addresses of Harbour Film Lab", fault.Message);
        Assert.Equal((ShipmentChecks.AddressDiffers, Level.Warning), (fault.Check, fault.Level));
        Assert.Equal(
            ("heron/rolls/r01.yaml", "ferry/rolls/r01.yaml"),
            (fault.Place.File, fault.Others.Single().Place.File)
        );
        Assert.Equal("The order has that of FERRY. Write the same in both.", fault.Help);
    }

    [Fact]
    public void Two_labs_a_slip_apart_are_flagged_and_two_others_are_not()
    {
        var (heron, ferry) = (Production("HERON", "R01"), Production("FERRY", "R01"));
        var fault = Assert.Single(Plan(heron, ferry.SendsTo("Harbor Film Lab"), Production("GULL", "R01").SendsTo("Brackwater")).Faults);
        Assert.Equal("Harbour Film Lab and Harbor Film Lab are two consignments", fault.Message);
        Assert.Equal((ShipmentChecks.LabsAlike, "heron/rolls/r01.yaml"), (fault.Check, fault.Place.File));
        Assert.NotEmpty(fault.Help);

        Assert.Empty(Plan(heron, ferry.SendsTo("Brackwater")).Faults);
    }
}
