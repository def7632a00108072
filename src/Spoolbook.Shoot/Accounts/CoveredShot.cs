using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A shot that is listed or was taken, with its takes.</summary>
/// <param name="Name">Scene and letter.</param>
/// <param name="Planned">Its line of the shot list; null where it is not listed.</param>
/// <param name="Takes">Its takes on rolls that count, without tests, in the order of the rolls.</param>
/// <param name="Film">
/// Film of its takes, good and bad, every frame counted once; frames that another shot's take owns are not counted.
/// </param>
public sealed record CoveredShot(string Name, PlannedShot? Planned, ImmutableArray<CoveredTake> Takes, Footage Film)
{
    /// <summary>The takes that are marked good and have good film.</summary>
    public IEnumerable<CoveredTake> Good => Takes.Where(t => t.IsGood);

    /// <summary>Whether there is a good take.</summary>
    public bool IsGot => Good.Any();

    /// <summary>Whether the production accepted that it has no good take.</summary>
    public bool IsGivenUp { get; init; }

    /// <summary>Whether the production goes without it.</summary>
    public bool IsDropped => IsGivenUp && !IsGot;

    /// <summary>Whether a take is on hold.</summary>
    public bool HasHeld => Takes.Any(t => t.Layer.Take.Mark.Value == Mark.Hold);
}
