using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>What several papers say of a roll in the same words.</summary>
internal static class RollPhrases
{
    /// <summary>The exposure index that a roll was rated at: its own, else its stock's.</summary>
    public static string Rated(Roll roll, StockLot? lot) => PaperFormat.OrDash(roll.Rated?.Value ?? lot?.Index.Value);

    /// <summary><c>+1</c>, <c>none</c>: the push.</summary>
    public static string Push(double push, PaperFormat format) => push == 0 ? format.Words["push-none"] : format.Stops(push);

    /// <summary>What the lab is to do with a roll: <c>prep, scan</c>.</summary>
    public static string Services(RollBook roll, PaperFormat format) =>
        roll.LabWork.Services is { Length: > 0 } services
            ? string.Join(", ", services.Select(s => Service(s, format)))
            : format.Words["process-only"];

    /// <summary>Which takes to scan, in a sentence; empty where no scan is ordered.</summary>
    public static string ToScan(RollBook roll, PaperFormat format) =>
        roll.LabWork.Services is { Length: > 0 } services && services.Any(s => LabServices.KindOf(s) == CostKind.Scan) ? format.ToScan : "";

    /// <summary>Film in the can, with its unit.</summary>
    public static string InCan(RollBook roll, Books books, PaperFormat format) =>
        format.AccountWithUnit(roll.Tally.InCan, books.Metric.Of(roll).InCan);

    /// <summary>What the lab will see: fog, what X-rays did, a head that is outside. A sentence for each.</summary>
    /// <param name="waived">What the production accepted.</param>
    public static IEnumerable<string> Expected(RollBook roll, Books books, IEnumerable<Waived> waived, PaperFormat format)
    {
        if (roll.Strip.Fogged.Any())
        {
            yield return string.Join(
                "; ",
                roll.Strip.Fogged.Select(fog =>
                    format.Words.Fill("expect-fog", ("from", format.Length(fog.From)), ("to", format.Length(fog.To)))
                )
            );
        }

        if (XRayed(roll, books, waived, format) is { Length: > 0 } passes)
        {
            yield return passes;
        }

        if (IsHeadOut(roll))
        {
            yield return format.Words.Fill("expect-head-out", ("to", format.Length(roll.Walk.TakingOut!.From)));
        }
    }

    /// <summary>
    /// What happened to the film itself, which a lab looks at before it runs: what is noted where the door was opened, and where
    /// it was taken out and threaded again. A sentence for each.
    /// </summary>
    public static IEnumerable<string> Handled(RollBook roll, PaperFormat format) =>
        from move in roll.Strip.Moves
        let note = move.Entry.Note?.Value ?? ""
        where move.Entry is Reload || (move.Entry is Fog && note.Length > 0)
        select format.Words.Fill(move.Entry is Reload ? "expect-rethreaded" : "expect-at", ("at", format.Length(move.From)))
            + (note.Length > 0 ? ": " + note : "");

    /// <summary>
    /// Whether the film was taken out rewound, so that its head is outside. Film that ran through the camera is tail out
    /// (common practice).
    /// </summary>
    public static bool IsHeadOut(RollBook roll) =>
        roll.Walk.TakingOut is { Before: { Position: { } at, Furthest: var furthest } } && at.Frames * 2 < furthest.Frames;

    /// <summary>
    /// That the film went through an X-ray machine, and what comes of it: a call, unless the production accepted it with its
    /// reason. Empty where it did not.
    /// </summary>
    /// <param name="waived">What the production accepted.</param>
    public static string XRayed(RollBook roll, Books books, IEnumerable<Waived> waived, PaperFormat format)
    {
        if (books.Stock.XRaysOf(roll.Roll) is not (> 0 and var passes))
        {
            return "";
        }

        // The check is about cans of a lot, and so is what was accepted.
        var lot = books.Production.LotOf(roll.Roll)?.Name.Value;
        var accepted = waived.FirstOrDefault(w => w.Finding.Check == "stock/x-rayed" && w.Finding.Lot == lot);
        return accepted is null
            ? format.Words.Fill("expect-x-rayed", ("n", PaperFormat.Number(passes)))
            : format.Words.Fill(
                "expect-x-rayed-accepted",
                ("n", PaperFormat.Number(passes)),
                ("reason", accepted.Waiver.Reason?.Value ?? format.Words["not-stated"])
            );
    }

    /// <summary>What costs film if nobody reads it, in capitals: X-rays, fog, effects made in the camera, a head that is outside.</summary>
    public static IEnumerable<string> Warnings(RollBook roll, Books books, PaperFormat format)
    {
        if (format.XRayed(books.Stock.XRaysOf(roll.Roll)) is { Length: > 0 } passes)
        {
            yield return passes;
        }

        if (roll.Strip.Fogged.Any())
        {
            yield return format.Words["label-fogged"];
        }

        if (!roll.Effects.IsEmpty)
        {
            yield return format.Words["label-do-not-correct"];
        }

        if (IsHeadOut(roll))
        {
            yield return format.Words["label-head-out"];
        }
    }

    /// <summary>A body with its number.</summary>
    public static string Body(Body body) => body.Name.Value + (body.Serial is { } serial ? " · " + serial.Value : "");

    // Services that the papers have a word for are in their language; a lab's own are as written.
    static string Service(string service, PaperFormat format) =>
        LabServices.KindOf(service) is var kind && kind == CostKind.Service
            ? service
            : format.Words["service-" + kind.ToString().ToLowerInvariant()];
}
