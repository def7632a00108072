using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Walks;

/// <summary>
/// A roll's log followed once, from loading to unloading: where the film was, on which day, in which body and in whose
/// hands.
/// </summary>
public sealed record RollWalk
{
    /// <summary>The roll.</summary>
    public required Roll Roll { get; init; }

    /// <summary>Its loading.</summary>
    public required Moment Loading { get; init; }

    /// <summary>What happened to it, a moment for each entry of the log.</summary>
    public required ImmutableArray<Moment> Moments { get; init; }

    /// <summary>Its unloading; null while it is in the camera.</summary>
    public required Moment? TakingOut { get; init; }

    /// <summary>All of it in order, from loading to unloading.</summary>
    public IEnumerable<Moment> All => TakingOut is null ? Moments.Prepend(Loading) : Moments.Prepend(Loading).Append(TakingOut);

    /// <summary>Its takes, in order.</summary>
    public IEnumerable<(Take Take, Moment Moment)> Takes => Moments.Where(m => m.Entry is Take).Select(m => ((Take)m.Entry!, m));

    /// <summary>Where the roll is at the end of everything written down.</summary>
    public RollStand End => TakingOut?.After ?? EndOfLog;

    /// <summary>Where the roll is at the end of its log.</summary>
    public RollStand EndOfLog => Moments is [.., var last] ? last.After : Loading.After;

    /// <summary>The bodies that the roll was in, one after the other; none where the sheet names none.</summary>
    public IEnumerable<BodyStay> Stays
    {
        get
        {
            var (body, from, place) = (Loading.After.Body, Roll.Load.On.Value, Roll.Load.On.Place);
            var known = from;
            foreach (var moment in Moments)
            {
                if (moment.Entry is Reload { On: { } threaded })
                {
                    if (body is not null)
                    {
                        yield return new BodyStay(Roll, body, from, place, known, null);
                    }

                    (body, from, place) = (moment.After.Body, threaded.Value, threaded.Place);
                }

                known = moment.When > known ? moment.When.Value : known;
            }

            if (body is not null)
            {
                yield return new BodyStay(Roll, body, from, place, Roll.Unload?.On.Value, Roll.Unload?.On.Place);
            }
        }
    }

    /// <summary>Follows the log of a roll.</summary>
    /// <param name="length">Film loaded, if known.</param>
    public static RollWalk Of(Roll roll, Footage? length = null)
    {
        var (before, stand) = (RollStand.Before(roll, length), RollStand.Loaded(roll, length));
        var loading = new Moment(null, before, stand)
        {
            Starts = before.Position,
            Day = stand.Day,
            When = roll.Load.On.Value,
        };
        var moments = ImmutableArray.CreateBuilder<Moment>(roll.Log.Length);
        foreach (var entry in roll.Log)
        {
            var moment = stand.Meet(entry);
            moments.Add(moment);
            stand = moment.After;
        }

        return new RollWalk
        {
            Roll = roll,
            Loading = loading,
            Moments = moments.MoveToImmutable(),
            TakingOut = roll.Unload is { } unload ? stand.Meet(unload) : null,
        };
    }
}
