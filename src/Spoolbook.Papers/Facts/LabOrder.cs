using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of the lab order: one for each consignment.</summary>
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

    /// <summary>Which consignment of how many; empty where there is only one.</summary>
    public required string Consignment { get; init; }

    /// <summary>The day on which it went.</summary>
    public required string SentOn { get; init; }

    /// <summary>How it goes; empty where nobody wrote it.</summary>
    public required string How { get; init; }

    /// <summary>The carrier's or the lab's receipt; empty where nobody wrote it.</summary>
    public required string Receipt { get; init; }

    /// <summary>Boxes that it takes; empty where nobody counted them.</summary>
    public required string Boxes { get; init; }

    public required string LengthUnit { get; init; }
    public required CostFacts Cost { get; init; }
}

/// <summary>Rolls that get the same process and the same push.</summary>
/// <param name="Pushed">Whether the push is to stand out.</param>
public sealed record OrderGroup(string Process, string Push, bool Pushed, string Count, string Exposed, ImmutableArray<CanFacts> Cans);

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

/// <summary>Rolls that are not in the box, and why.</summary>
public sealed record KeptBack(string Roll, string Why);

/// <summary>Gathers the facts of the lab order.</summary>
internal static class LabOrder
{
    /// <summary>The consignments to print an order for; an empty one where there is nothing to send, so that the paper says so.</summary>
    public static ImmutableArray<Sending> Orders(CostBook cost) => cost.Sendings.IsEmpty ? [new Sending(1, null, [])] : cost.Sendings;

    public static LabOrderFacts Of(Sending sending, ShootBook book, CostBook cost, Func<RollBook, ImmutableArray<WaiverFacts>> waivers, PaperHead head, Wording say)
    {
        var lab = book.Production.Lab;
        var sent = sending.Rolls.ToList();
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
            NotSent = [.. from roll in book.Rolls.Except(sent)
                         group roll.Roll.Name.Value by Why(roll, sending, cost, say) into rolls
                         select new KeptBack(string.Join(", ", rolls), rolls.Key)],
            Cans = say.Count(sent.Count, "can"),
            Exposed = ExposedOn(sent, say),
            Consignment = cost.Sendings.Length > 1 ? say.Words.Fill("consignment-of", ("n", Wording.Number(sending.Number)), ("all", Wording.Number(cost.Sendings.Length))) : "",
            SentOn = sending.SentOn is { } gone ? say.Date(gone) : say.Words["not-sent-yet"],
            How = sending.Written?.How?.Value ?? "",
            Receipt = sending.Written?.Receipt?.Value ?? "",
            Boxes = sending.Written?.Boxes is { } boxes ? say.Count(boxes.Value, "box") : "",
            LengthUnit = say.LengthUnitName,
            Cost = CostFacts.Of(cost.OrderOf(sending), say),
        };
    }

    static ImmutableArray<string> Lines(ImmutableArray<Located<string>>? lines) => lines is { } written ? [.. written.Select(l => l.Value)] : [];

    static IEnumerable<OrderGroup> Groups(ShootBook book, List<RollBook> sent, Func<RollBook, ImmutableArray<WaiverFacts>> waivers, Wording say) =>
        from roll in sent
        let work = roll.LabWork
        group roll by (work.Process, work.Push) into same
        orderby same.Key.Process ?? "", same.Key.Push
        select new OrderGroup(
            same.Key.Process ?? say.Words["not-stated"],
            CameraReport.PushOf(same.Key.Push, say),
            same.Key.Push != 0,
            say.Count(same.Count(), "can"),
            ExposedOn(same, say),
            [.. same.Select(r => Can(r, book.Production, waivers(r), say))]);

    static string ExposedOn(IEnumerable<RollBook> rolls, Wording say) => say.LengthWithUnit(rolls.Aggregate(Footage.Zero, (sum, r) => sum + r.Tally.Exposed));

    static CanFacts Can(RollBook roll, Production production, ImmutableArray<WaiverFacts> waivers, Wording say)
    {
        var lot = production.LotOf(roll.Roll);
        var services = roll.LabWork.Services;
        return new CanFacts(
            roll.Roll.Name.Value,
            CanCode.Of(production, roll.Roll).ToString(),
            say.Date(DateOnly.FromDateTime(roll.Roll.Unload!.On.Value)),
            CameraReport.StockOf(roll, lot, say),
            CameraReport.RatedOf(roll.Roll, lot),
            say.Length(roll.Tally.Exposed),
            services.Length == 0 ? say.Words["process-only"] : string.Join(", ", services.Select(s => Service(s, say))),
            roll.Roll.Lab?.Notes?.Value ?? "",
            EffectLines.Of(roll, say),
            [.. Expected(roll, say)],
            waivers);
    }

    // What everybody knows by a word is said in the papers' language; what a lab calls its own, as it does.
    static string Service(string service, Wording say) =>
        LabServices.KindOf(service) is var kind && kind == CostKind.Service ? service : say.Words["service-" + kind.ToString().ToLowerInvariant()];

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

    static string Why(RollBook roll, Sending sending, CostBook cost, Wording say) =>
        cost.Sendings.FirstOrDefault(s => s.Rolls.Contains(roll)) is not { } other ? Why(roll.Roll, say)
        : say.Words.Fill(
            sending.Again.Contains(roll) ? "kept-again" : other.SentOn is null ? "kept-for-later" : "kept-sent",
            ("n", Wording.Number(other.Number)),
            ("day", other.SentOn is { } day ? say.Date(day) : ""));

    static string Why(Roll roll, Wording say) =>
        roll.IsPractice ? say.Words["kept-practice"]
        : roll.Unload is null ? say.Words["kept-in-camera"]
        : roll.Lab?.Notes is { } notes ? say.Words["kept-held"] + ": " + notes.Value
        : say.Words["kept-held"];
}
