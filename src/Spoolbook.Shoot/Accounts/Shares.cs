using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>What a production's film can be shared out by.</summary>
public enum Sharing
{
    /// <summary>Each roll, by name.</summary>
    Roll,

    /// <summary>Each take, by its slate. Film over which no take was shot has no slate.</summary>
    Take,

    /// <summary>Each scene. Film over which no take was shot has no scene.</summary>
    Scene,

    /// <summary>Each day on which film was spent, as <c>2026-10-04</c>.</summary>
    Day,

    /// <summary>Each lot of raw stock, through the parent of a short end.</summary>
    Lot,

    /// <summary>Each camera body.</summary>
    Body,

    /// <summary>Each person who kept the camera, by id.</summary>
    Assistant,
}

/// <summary>The film of one key, counted.</summary>
/// <param name="Key">The slate, scene, day, …; null for film that has none.</param>
/// <param name="Tally">Its account.</param>
public sealed record Share(string? Key, Tally Tally);

/// <summary>Film shared out, every frame to one key, so that the shares add up to the total.</summary>
/// <remarks>
/// A frame goes to the take and scene of its <see cref="Segment.Owner"/>, even where it was fogged or lost
/// afterwards: the take had spent it. It goes to the day, body and assistant of its <see cref="Segment.Custody"/>.
/// A roll taken up again on another day is so shared between the days; film left over goes to the day on
/// which the roll was taken out.
/// </remarks>
public static class Shares
{
    /// <summary>The shares of some rolls, in the order in which a reader would count the keys, no key last.</summary>
    /// <param name="production">Where the rolls' lots are described.</param>
    public static ImmutableArray<Share> Of(Production production, IEnumerable<RollBook> rolls, Sharing sharing)
    {
        var counted = from roll in rolls
                      from segment in roll.Strip.Segments
                      group segment by KeyOf(production, roll.Roll, segment, sharing) into share
                      select new Share(share.Key, Tally.Of(share));
        return [.. counted.OrderBy(s => s.Key, NameOrder.Instance)];
    }

    static string? KeyOf(Production production, Roll roll, Segment segment, Sharing sharing) => sharing switch
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
