using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.LabOrders;

/// <summary>One can in the box.</summary>
/// <param name="Code">The code on its label.</param>
/// <param name="TakenOut">The day it came out of the camera.</param>
/// <param name="Push">Empty where it is processed normally.</param>
/// <param name="DoNot">What the lab must not correct: effects made in the camera.</param>
/// <param name="Files">What its scan comes to; empty where none is ordered.</param>
/// <param name="Expect">What the lab will see: fog, film that was X-rayed, a head that is outside.</param>
public sealed record CanFacts(
    string Roll,
    string Code,
    string TakenOut,
    string Process,
    string Push,
    StockFacts Stock,
    string Rated,
    string Exposed,
    string Services,
    string Files,
    string Notes,
    ImmutableArray<string> DoNot,
    ImmutableArray<string> Expect,
    ImmutableArray<WaiverFacts> Waivers
)
{
    /// <summary>Which can of the consignment it is, as on its label; empty for one that goes with none.</summary>
    public string Number { get; private init; } = "";

    /// <summary>How much was loaded, where the rest was cut off; else empty. Routine, so it is no reason for an exception.</summary>
    public string CutFrom { get; private init; } = "";

    /// <summary>Whether there is something to do or to know that is not so of every can.</summary>
    public bool IsException =>
        IsOtherProcess || Push.Length > 0 || Notes.Length > 0 || !DoNot.IsEmpty || !Expect.IsEmpty || !Waivers.IsEmpty || IsAgreedApart;

    /// <summary>What was agreed with the lab for this can and not for every can beside it.</summary>
    public ImmutableArray<string> Agreed { get; private init; } = [];

    internal bool IsAgreedApart { get; private init; }

    /// <summary>Whether a negative's bath would ruin it, so that the process stands out.</summary>
    public bool IsReversal { get; private init; }

    /// <summary>Whether it is processed otherwise than most cans beside it.</summary>
    public bool IsOtherProcess { get; private init; }

    /// <summary>Whether the process is printed so that nobody can miss it.</summary>
    public bool ProcessStandsOut => IsReversal || IsOtherProcess;

    /// <summary>
    /// What it costs to miss what is said of this can. The wrong bath ruins the roll, a missed push the exposure, a
    /// correction the effects; fog wants a look first, and X-rays and a hand at the crank only surprise. Whatever is worse
    /// outweighs all that is less together.
    /// </summary>
    internal int Cost =>
        new[]
        {
            ProcessStandsOut,
            Push.Length > 0,
            HasTimedEffects,
            IsFogged,
            IsAgreedApart,
            !DoNot.IsEmpty,
            IsXRayed,
            IsHeadOut,
            !Waivers.IsEmpty,
        }.Aggregate(0, (cost, isSo) => (2 * cost) + (isSo ? 1 : 0));

    /// <summary>Whether the door was opened, or light got in otherwise.</summary>
    internal bool IsFogged { get; private init; }

    /// <summary>Whether it went through an X-ray machine.</summary>
    internal bool IsXRayed { get; private init; }

    /// <summary>Whether its head is outside.</summary>
    internal bool IsHeadOut { get; private init; }

    /// <summary>The process as on the can's label, where there is little room.</summary>
    public string ShortProcess { get; private init; } = "";

    // Fades, dissolves and film exposed again. Hand cranking wavers anyway.
    bool HasTimedEffects { get; init; }

    // Of two processes with as many cans, the one of more film.
    static string? UsualProcess(IEnumerable<RollBook> cans) =>
        cans.GroupBy(can => can.LabWork.Process)
            .OrderByDescending(same => same.Count())
            .ThenByDescending(same => same.Sum(can => can.Tally.InCan.Frames))
            .ThenBy(same => same.Key, StringComparer.Ordinal)
            .FirstOrDefault()
            ?.Key;

    // How the camera was loaded, focused and slated is not for the lab, which would call whether to run the roll at all.
    static bool TellsTheLab(string check) =>
        check[..check.IndexOf('/', StringComparison.Ordinal)] is "lab" or "stock" or "length" or "exposure" or "speed" or "counter"
        || check == "load/in-bright-light";

    /// <param name="waived">What the production accepted.</param>
    /// <param name="beside">The cans of the same order, this one among them.</param>
    internal static CanFacts Of(
        RollBook roll,
        Books books,
        PaperFormat format,
        IReadOnlyCollection<Waived> waived,
        IReadOnlyCollection<RollBook> beside
    )
    {
        var (production, delivery) = (books.Production, books.Delivery);
        var lot = production.LotOf(roll.Roll);
        var agreed = AgreedOn.Of(roll, beside, production, format);
        return new CanFacts(
            roll.Roll.Name.Value,
            CanCode.Of(production, roll.Roll).ToString(),
            format.Date(DateOnly.FromDateTime(roll.Roll.Unload!.On.Value)),
            format.Process(roll.LabWork.Process),
            roll.LabWork.Push == 0 ? "" : format.Stops(roll.LabWork.Push),
            StockFacts.Of(roll, lot, books.Stock, format),
            RollPhrases.Rated(roll.Roll, lot),
            format.Account(roll.Tally.InCan, books.Metric.Of(roll).InCan),
            RollPhrases.Services(roll, format),
            delivery.Of(roll) is { } scanned
                ? DeliverFacts.FilesOf(
                    delivery.Files(scanned),
                    format,
                    delivery.TenthsOf(scanned, [.. beside.Select(delivery.Of).OfType<ScannedRoll>()])
                )
                : "",
            roll.Roll.Lab?.Notes?.Value ?? "",
            EffectLines.Briefly(roll, format),
            [.. RollPhrases.Expected(roll, books, waived, format), .. RollPhrases.Handled(roll, format)],
            [
                .. from accepted in waived
                where accepted.Finding.Roll == roll.Roll.Name.Value && TellsTheLab(accepted.Finding.Check)
                select WaiverFacts.Of(accepted, format),
            ]
        )
        {
            Number = books.Cost.SendingOf(roll) is { } sending ? PaperFormat.Number(sending.NumberOf(roll)) : "",
            CutFrom =
                roll.Tally.InCan < roll.Strip.Loaded ? format.Words.Fill("order-cut", ("loaded", format.Length(roll.Strip.Loaded))) : "",
            IsReversal = roll.LabWork.Process is { } process && ProcessKind.IsReversal(process),
            ShortProcess = format.ShortProcess(roll.LabWork.Process),
            IsOtherProcess = roll.LabWork.Process != UsualProcess(beside),
            IsFogged = roll.Strip.Fogged.Any(),
            IsXRayed = books.Stock.XRaysOf(roll.Roll) > 0,
            IsHeadOut = RollPhrases.IsHeadOut(roll),
            HasTimedEffects = roll.Effects.Any(e => e.Kind != EffectKind.HandCranked),
            Agreed = agreed.Lines,
            IsAgreedApart = agreed.IsApart,
        };
    }
}
