using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Splits film up, every frame to one key, so that the shares add up to the total.</summary>
/// <remarks>
/// A frame goes to the take and scene of its <see cref="Segment.Owner"/>, even where it was fogged or lost afterwards:
/// the take used it. It goes to the day, body and assistant of its <see cref="Segment.Custody"/>. A roll shot on
/// several days is split between them; film left over goes to the day on which the roll was unloaded.
/// </remarks>
public static class Shares
{
    /// <summary>The shares of some rolls, in the natural order of the keys, no key last.</summary>
    /// <param name="production">For the rolls' lots.</param>
    public static ImmutableArray<Share> Split(Production production, IEnumerable<RollBook> rolls, Sharing sharing)
    {
        var counted =
            from roll in rolls
            from segment in roll.Strip.Segments
            group segment by KeyOf(production, roll.Roll, segment, sharing) into share
            select new Share(share.Key, Tally.Of(share));
        return [.. counted.OrderBy(s => s.Key, NameOrder.Instance)];
    }

    static string? KeyOf(Production production, Roll roll, Segment segment, Sharing sharing) =>
        sharing switch
        {
            Sharing.Roll => roll.Name.Value,
            Sharing.Take => segment.Owner?.Take.Slate,
            Sharing.Scene => segment.Owner?.Take.Scene.Value,
            Sharing.Day => segment.Custody.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Sharing.Lot => production.LotOf(roll)?.Name.Value,
            Sharing.Body => segment.Custody.Body,
            Sharing.Assistant => segment.Custody.By,
            _ => throw new ArgumentOutOfRangeException(nameof(sharing)),
        };
}
