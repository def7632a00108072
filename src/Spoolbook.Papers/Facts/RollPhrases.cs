using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
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

    /// <summary>A body with its number.</summary>
    public static string Body(Body body) => body.Name.Value + (body.Serial is { } serial ? " · " + serial.Value : "");

    // Services that the papers have a word for are in their language; a lab's own are as written.
    static string Service(string service, PaperFormat format) =>
        LabServices.KindOf(service) is var kind && kind == CostKind.Service
            ? service
            : format.Words["service-" + kind.ToString().ToLowerInvariant()];
}
