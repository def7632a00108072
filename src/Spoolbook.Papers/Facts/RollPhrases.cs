using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>What several papers say of a roll in the same words.</summary>
internal static class RollPhrases
{
    /// <summary>The exposure index that a roll was rated at: its own, else its stock's.</summary>
    public static string Rated(Roll roll, StockLot? lot) => PaperFormat.OrDash(roll.Rated?.Value ?? lot?.Index.Value);

    /// <summary><c>+1</c>, <c>none</c>: the push.</summary>
    public static string Push(double push, PaperFormat format) => push == 0 ? format.Words["push-none"] : format.Stops(push);

    /// <summary>A body with its number.</summary>
    public static string Body(Body body) => body.Name.Value + (body.Serial is { } serial ? " · " + serial.Value : "");
}
