using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.LabOrders;

/// <summary>One can in the box.</summary>
/// <param name="Code">The code on its label.</param>
/// <param name="TakenOut">The day it came out of the camera.</param>
/// <param name="Push">Empty where it is processed normally.</param>
/// <param name="DoNot">What the lab must not correct: effects made in the camera.</param>
/// <param name="Files">What its scan comes to; empty where none is ordered.</param>
/// <param name="Expect">What the lab will see and need not call about: fog, a short end cut off.</param>
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

    /// <summary>Whether there is something to do or to know that is not so of every can.</summary>
    public bool IsException => Push.Length > 0 || Notes.Length > 0 || !DoNot.IsEmpty || !Expect.IsEmpty || !Waivers.IsEmpty;

    /// <summary>Whether a negative's bath would ruin it, so that the process stands out.</summary>
    public bool IsReversal { get; private init; }

    // How the camera was loaded, focused and slated is not for the lab, which would call whether to run the roll at all.
    static bool TellsTheLab(string check) =>
        check[..check.IndexOf('/', StringComparison.Ordinal)] is "lab" or "stock" or "length" or "exposure" or "speed" or "counter"
        || check == "load/in-bright-light";

    internal static CanFacts Of(RollBook roll, Books books, PaperFormat format, ImmutableArray<WaiverFacts> waivers)
    {
        var (production, delivery) = (books.Production, books.Delivery);
        var lot = production.LotOf(roll.Roll);
        return new CanFacts(
            roll.Roll.Name.Value,
            CanCode.Of(production, roll.Roll).ToString(),
            format.Date(DateOnly.FromDateTime(roll.Roll.Unload!.On.Value)),
            format.Process(roll.LabWork.Process),
            roll.LabWork.Push == 0 ? "" : format.Stops(roll.LabWork.Push),
            StockFacts.Of(roll, lot, format),
            RollPhrases.Rated(roll.Roll, lot),
            format.Account(roll.Tally.InCan, books.Metric.Of(roll).InCan),
            RollPhrases.Services(roll, format),
            delivery.Of(roll) is { } scanned ? DeliverFacts.FilesOf(delivery.Files(scanned), format) : "",
            roll.Roll.Lab?.Notes?.Value ?? "",
            EffectLines.Briefly(roll, format),
            [.. RollPhrases.Expected(roll, books, format)],
            [.. waivers.Where(w => TellsTheLab(w.Check))]
        )
        {
            Number = books.Cost.SendingOf(roll) is { } sending ? PaperFormat.Number(sending.NumberOf(roll)) : "",
            IsReversal = roll.LabWork.Process is { } process && ProcessKind.IsReversal(process),
        };
    }
}
