using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;

namespace Spoolbook.Shoot.Tests.Money;

public class MoneyLawTests
{
    static readonly Gen<Located<decimal>?> Rate = Gen.Frequency(
        (4, Gen.Int[0, 200_000].Select(n => (Located<decimal>?)Sheet.Written(n / 10_000m))),
        (1, Gen.Const((Located<decimal>?)null))
    );

    static readonly Gen<Rates> AnyRates =
        from foot in Gen.Int[0, 20_000]
        from unit in Gen.Enum<LengthUnit>()
        from minimum in Rate
        from push in Rate
        from prep in Rate
        from scan in Rate
        from shipping in Rate
        from tax in Rate
        select PricedProduction.Full with
        {
            Processes = [new ProcessRate(default, Sheet.Written("ecn-2"), new LengthRate(Sheet.Written(foot / 10_000m), unit), minimum)],
            PushPerStop = push is { } stop ? Sheet.Written(new PushRate(stop.Value, null)) : null,
            PrepPerRoll = prep,
            Scan = scan is { } price ? new LengthRate(price, unit) : null,
            Shipping = shipping,
            Tax = tax,
        };

    static readonly Gen<Production> AnyPriced =
        from production in AnyShoot.Production
        from rates in AnyRates
        select production with
        {
            Rates = rates,
            Lab = new Lab(default) { Services = [Sheet.Written("prep"), Sheet.Written("scan")] },
        };

    [Fact]
    public void Lines_add_up_to_the_total_in_any_order() =>
        Gen.Select(AnyPriced, Gen.Int[0, 999])
            .Sample(
                (production, seed) =>
                {
                    var cost = production.Cost();
                    var order = cost.Lines.OrderBy(l => (l.Amount ?? seed) * 7919 % 101).ThenBy(l => l.Kind);
                    Assert.Equal(cost.Total, CostBook.SumOf(order));
                    Assert.Equal(cost.Total, Enum.GetValues<CostStage>().Sum(cost.TotalAt));
                }
            );

    [Fact]
    public void Grouped_by_kind_no_line_is_lost_and_none_is_billed_twice() =>
        AnyPriced.Sample(production =>
        {
            var lines = production.Cost().Lines;
            var groups = CostGroup.Group(lines);
            Assert.Equal(
                lines.ToHashSet(ReferenceEqualityComparer.Instance),
                groups.SelectMany(g => g.Lines).ToHashSet(ReferenceEqualityComparer.Instance)
            );
            Assert.Equal(lines.Length, groups.Sum(g => g.Lines.Length));
            Assert.Equal(CostBook.SumOf(lines), groups.Sum(g => g.Amount ?? 0));
        });

    // 0.3048 m to the foot, exact: NIST SP 811.
    [Fact]
    public void A_price_of_one_by_the_metre_and_of_0_3048_by_the_foot_cost_the_same_for_every_roll() =>
        AnyPriced.Sample(production =>
        {
            static LengthRate Of(decimal price, LengthUnit unit) => new(Sheet.Written(price), unit);
            static Rates At(Rates rates, LengthRate rate) =>
                rates with
                {
                    Processes = [.. rates.Processes.Select(p => p with { Length = rate })],
                    Scan = rate,
                };
            var feet = (production with { Rates = At(production.Rates!, Of(0.3048m, LengthUnit.Feet)) }).Cost();
            var metres = (production with { Rates = At(production.Rates!, Of(1m, LengthUnit.Metres)) }).Cost();
            Assert.Equal(feet.Lines.Select(l => (l.Kind, l.Roll, l.Amount)), metres.Lines.Select(l => (l.Kind, l.Roll, l.Amount)));
        });

    [Fact]
    public void Every_amount_is_in_whole_cents() =>
        AnyPriced.Sample(production =>
            Assert.All(production.Cost().Lines.Where(l => l.Amount is not null), l => Assert.Equal(0, l.Amount * 100 % 1))
        );

    [Fact]
    public void A_line_has_an_amount_or_a_reason_and_never_both() =>
        AnyPriced.Sample(production => Assert.All(production.Cost().Lines, l => Assert.NotEqual(l.Amount is null, l.Open is null)));

    [Fact]
    public void Changing_a_rate_changes_only_cost() =>
        Gen.Select(AnyPriced, AnyRates)
            .Sample(
                (production, rates) =>
                {
                    var before = Books.Of(production);
                    var after = Books.Of(production with { Rates = rates });
                    Assert.Equal(before.Stock.Lots.Select(l => (l.Left, l.Exposed)), after.Stock.Lots.Select(l => (l.Left, l.Exposed)));
                    Assert.Equal(before.Shoot.Total.Exposed, after.Shoot.Total.Exposed);
                    Assert.Equal(
                        before.Cost.Lines.Select(l => (l.Stage, l.Kind, l.Roll, l.Film)),
                        after.Cost.Lines.Select(l => (l.Stage, l.Kind, l.Roll, l.Film))
                    );
                }
            );

    // Random rolls: some in no consignment, some in several, some named twice in one, some unknown.
    static readonly Gen<Production> AnyConsigned =
        from production in AnyPriced
        from consignments in (
            from day in Gen.Int[0, 5]
            from rolls in Gen.Int[0, production.Rolls.Length]
                .Select(i => i < production.Rolls.Length ? production.Rolls[i].Name.Value : "nobody's")
                .Array[0, 6]
            from boxes in Gen.Int[0, 3]
            select new Consignment(default)
            {
                SentOn = day == 0 ? null : Sheet.Written(new DateOnly(2026, 10, day)),
                Rolls = [.. rolls.Select(Sheet.Written)],
                Boxes = boxes == 0 ? null : Sheet.Written(boxes),
            }
        ).Array[0, 4]
        select production with
        {
            Lab = production.Lab! with { Consignments = [.. consignments] },
        };

    [Fact]
    public void A_roll_in_two_consignments_is_never_billed_twice() =>
        AnyConsigned.Sample(production =>
        {
            var together = (production with { Lab = production.Lab! with { Consignments = [] } }).Cost();
            var apart = production.Cost();
            Assert.Equal(Work(together).Order(), Work(apart).Order());
            static IEnumerable<(string, CostKind, string?, decimal?)> Work(CostBook cost) =>
                cost.Lines.Where(l => l.Roll is not null).Select(l => (l.Roll!, l.Kind, l.Name, l.Amount));
        });

    [Fact]
    public void Every_roll_that_goes_to_the_lab_is_in_one_consignment() =>
        AnyConsigned.Sample(production =>
        {
            var book = BookKeeper.Keep(production);
            var sendings = Sending.Of(book);
            Assert.Equal(
                book.Sent.Select(r => r.Roll.Name.Value).Order(),
                sendings.SelectMany(s => s.Rolls).Select(r => r.Roll.Name.Value).Order()
            );
            Assert.Equal(Enumerable.Range(1, sendings.Length), sendings.Select(s => s.Number));
        });

    [Fact]
    public void The_orders_of_all_consignments_add_up_to_what_the_lab_is_paid() =>
        AnyConsigned.Sample(production =>
        {
            var cost = production.Cost();
            Assert.Equal(cost.OrderTotal, cost.Sendings.Sum(s => CostBook.SumOf(cost.OrderOf(s))));
            Assert.Equal(
                cost.Sendings.Sum(s => s.Boxes),
                cost.Order.Where(l => l.Kind == CostKind.Shipping).Sum(l => (int)l.Quantity.ToDouble())
            );
        });

    [Fact]
    public void A_roll_is_billed_once_for_each_kind_of_work() =>
        AnyPriced.Sample(production =>
        {
            var cost = production.Cost();
            var work = cost.Lines.Where(l => l.Roll is not null).Select(l => (l.Roll, l.Kind, l.Name)).ToList();
            Assert.Equal(work.Distinct(), work);
            Assert.All(cost.Lines.Where(l => l.Film is { }), l =>
                Assert.Equal(l.Unit == CostUnit.Metre ? l.Film!.Value.Metres(Gauge.Film16) : l.Film!.Value.Feet(Gauge.Film16), l.Quantity)
            );
        });
}
