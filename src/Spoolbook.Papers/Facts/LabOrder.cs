using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of the lab order.</summary>
public sealed record LabOrderFacts(PaperHead Head) : PaperFacts(Head)
{
    public required bool HasLab { get; init; }
    public required string Lab { get; init; }
    public required ImmutableArray<string> Address { get; init; }
    public required ImmutableArray<string> Contact { get; init; }
    public required ImmutableArray<string> ReturnTo { get; init; }
    public required ImmutableArray<string> BillTo { get; init; }
    public required ImmutableArray<string> InDoubt { get; init; }
    public required string Gauge { get; init; }
    public required ImmutableArray<string> Agreed { get; init; }
    public required string NeededBy { get; init; }
    public required ImmutableArray<OrderGroup> Groups { get; init; }
    public required ImmutableArray<KeptBack> NotSent { get; init; }
    public required string Cans { get; init; }
    public required string Exposed { get; init; }

    /// <summary>The boxes that the cans go in, one for each day of sending that was written.</summary>
    public required ImmutableArray<OrderBox> Boxes { get; init; }
    public required string LengthUnit { get; init; }
    public required CostFacts Cost { get; init; }
}

/// <summary>Rolls that get the same process and the same push.</summary>
/// <param name="Pushed">Whether the push is to stand out.</param>
public sealed record OrderGroup(string Process, string Push, bool Pushed, string Count, string Exposed, ImmutableArray<CanFacts> Cans);

/// <summary>Cans that go on one day.</summary>
/// <param name="Sent">The day; empty where it was not written.</param>
public sealed record OrderBox(string Sent, string Rolls, string Cans, string Exposed);

/// <summary>One can in the box.</summary>
/// <param name="Code">What stands on its label.</param>
/// <param name="TakenOut">The day it came out of the camera.</param>
/// <param name="DoNot">What the lab must leave as it is: effects made in the camera.</param>
/// <param name="Expect">What the lab will see and need not ask about: fog, a short end cut off.</param>
public sealed record CanFacts(
    string Roll,
    string Code,
    string TakenOut,
    StockFacts Stock,
    string Rated,
    string Exposed,
    string Services,
    string Notes,
    ImmutableArray<string> DoNot,
    ImmutableArray<string> Expect,
    ImmutableArray<WaiverFacts> Waivers);

/// <summary>A roll that is not in the box, and why.</summary>
public sealed record KeptBack(string Roll, string Why);

/// <summary>Gathers the facts of the lab order.</summary>
internal static class LabOrder
{
    public static LabOrderFacts Of(ShootBook book, CostBook cost, Func<RollBook, ImmutableArray<WaiverFacts>> waivers, PaperHead head, Wording say)
    {
        var lab = book.Production.Lab;
        var sent = book.Sent.ToList();
        return new LabOrderFacts(head)
        {
            HasLab = lab is not null,
            Lab = lab?.Name?.Value ?? say.Words["lab-open"],
            Address = Lines(lab?.Address),
            Contact = Lines(lab?.Contact),
            ReturnTo = Lines(lab?.ReturnTo),
            BillTo = Lines(lab?.BillTo),
            InDoubt = Lines(lab?.InDoubt),
            Gauge = book.Production.Gauge.Name,
            Agreed = Lines(lab?.Agreed),
            NeededBy = lab?.NeededBy is { } day ? say.Date(day.Value) : say.Words["not-stated"],
            Groups = [.. Groups(book, sent, waivers, say)],
            NotSent = [.. book.Rolls.Except(sent).Select(r => new KeptBack(r.Roll.Name.Value, Why(r.Roll, say)))],
            Cans = say.Count(sent.Count, "can"),
            Exposed = ExposedOn(sent, say),
            Boxes = [.. Boxes(sent, say)],
            LengthUnit = say.LengthUnitName,
            Cost = CostFacts.Of(cost.Order, say),
        };
    }

    static ImmutableArray<string> Lines(ImmutableArray<Located<string>>? lines) => lines is { } written ? [.. written.Select(l => l.Value)] : [];

    static IEnumerable<OrderGroup> Groups(ShootBook book, List<RollBook> sent, Func<RollBook, ImmutableArray<WaiverFacts>> waivers, Wording say) =>
        from roll in sent
        let work = CostLabWork.Of(book.Production, roll.Roll)
        group roll by (work.Process, work.Push) into same
        orderby same.Key.Process ?? "", same.Key.Push
        select new OrderGroup(
            same.Key.Process ?? say.Words["not-stated"],
            CameraReport.PushOf(same.Key.Push, say),
            same.Key.Push != 0,
            say.Count(same.Count(), "can"),
            ExposedOn(same, say),
            [.. same.Select(r => Can(r, book.Production, waivers(r), say))]);

    // What was sent last week is not in this week's box, and whoever counts must not look for it there.
    static IEnumerable<OrderBox> Boxes(List<RollBook> sent, Wording say) =>
        from roll in sent
        group roll by roll.Roll.Lab?.SentOn?.Value into box
        orderby box.Key ?? DateOnly.MaxValue
        select new OrderBox(
            box.Key is { } day ? say.Date(day) : "",
            string.Join(", ", box.Select(r => r.Roll.Name.Value)),
            say.Count(box.Count(), "can"),
            ExposedOn(box, say));

    static string ExposedOn(IEnumerable<RollBook> rolls, Wording say) => say.Length(rolls.Aggregate(Footage.Zero, (sum, r) => sum + r.Tally.Exposed));

    static CanFacts Can(RollBook roll, Production production, ImmutableArray<WaiverFacts> waivers, Wording say)
    {
        var lot = production.LotOf(roll.Roll);
        var services = CostLabWork.Of(production, roll.Roll).Services;
        return new CanFacts(
            roll.Roll.Name.Value,
            CanCode.Of(production, roll.Roll).ToString(),
            say.Date(DateOnly.FromDateTime(roll.Roll.Unload!.On.Value)),
            CameraReport.StockOf(roll, lot, say),
            CameraReport.RatedOf(roll.Roll, lot),
            say.Length(roll.Tally.Exposed),
            services.Length == 0 ? "–" : string.Join(", ", services),
            roll.Roll.Lab?.Notes?.Value ?? "",
            EffectLines.Of(roll, say),
            [.. Expected(roll, say)],
            waivers);
    }

    static IEnumerable<string> Expected(RollBook roll, Wording say)
    {
        foreach (var fog in roll.Strip.Fogged)
        {
            yield return say.Words.Fill("expect-fog", ("from", say.Length(fog.From)), ("to", say.Length(fog.To)));
        }

        if (roll.Tally.ShortEnd > Footage.Zero)
        {
            yield return say.Words.Fill("expect-cut", ("film", say.LengthWithUnit(roll.Tally.Exposed)), ("loaded", say.LengthWithUnit(roll.Strip.Loaded)));
        }
    }

    static string Why(Roll roll, Wording say) =>
        roll.IsPractice ? say.Words["kept-practice"]
        : roll.Unload is null ? say.Words["kept-in-camera"]
        : roll.Lab?.Notes is { } notes ? say.Words["kept-held"] + ": " + notes.Value
        : say.Words["kept-held"];
}
