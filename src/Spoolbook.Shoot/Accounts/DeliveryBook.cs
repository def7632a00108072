using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Film.Scans;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>What the lab is to deliver, counted: the film that it scans, and the files that come of it.</summary>
/// <param name="Ordered">What is ordered; null where nothing is written.</param>
/// <param name="Rate">The speed that the files play at; the projection speed unless written.</param>
/// <param name="FrameSize">Bytes of a frame; null where it is unknown.</param>
/// <param name="Rolls">The rolls that go to the lab to be scanned, in the production's order; none where nothing is ordered.</param>
public sealed record DeliveryBook(Deliver? Ordered, Speed Rate, Ratio? FrameSize, ImmutableArray<ScannedRoll> Rolls)
{
    /// <summary>The delivery of a shoot.</summary>
    internal static DeliveryBook Keep(ShootBook book)
    {
        var ordered = book.Production.Lab?.Deliver;
        return new DeliveryBook(
            ordered,
            ordered?.Rate?.Value ?? book.Production.ProjectedAt,
            SizeOf(ordered),
            ordered is null
                ? []
                : [.. from roll in book.Sent where IsScanned(roll) select new ScannedRoll(roll, FilmOf(roll, ordered.Takes?.Value))]
        );
    }

    /// <summary>The part of a roll that is scanned; null where none is.</summary>
    public ScannedRoll? Of(RollBook roll) => Rolls.FirstOrDefault(r => ReferenceEquals(r.Roll, roll));

    /// <summary>The scanned rolls of a consignment.</summary>
    public ImmutableArray<ScannedRoll> Of(Sending sending) => [.. sending.Rolls.Select(Of).OfType<ScannedRoll>()];

    /// <summary>Whether rolls of a consignment are to be scanned and nothing is written about what to deliver.</summary>
    public bool IsMissing(Sending sending) => Ordered is null && sending.Rolls.Any(IsScanned);

    /// <summary>The files of some rolls.</summary>
    public ScanSum Files(params ImmutableArray<ScannedRoll> rolls)
    {
        var film = rolls.Aggregate(Footage.Zero, (sum, roll) => sum + roll.Film);
        return new ScanSum(film.Frames, film.Seconds(Rate), FrameSize * film.Frames / ScannedFrame.Gigabyte);
    }

    /// <summary>
    /// Tenths of a gigabyte of a roll's files, rounded so that those of the rolls beside it add up to the printed sum; null
    /// where a frame's size is unknown.
    /// </summary>
    /// <param name="beside">The rolls that the sum is of, this one among them.</param>
    public long? TenthsOf(ScannedRoll roll, params ImmutableArray<ScannedRoll> beside)
    {
        if (Files(beside).Gigabytes is not { } all || beside.IndexOf(roll) is not (>= 0 and var at))
        {
            return (long?)(Files(roll).Gigabytes * 10)?.Round();
        }

        return LargestRemainder.Round([.. beside.Select(r => Files(r).Gigabytes!.Value * 10)], (long)(all * 10).Round())[at];
    }

    /// <summary>The changes that the sync takes of some rolls need, each once; none where they run at the files' speed.</summary>
    public ImmutableArray<RateChange> Changes(params ImmutableArray<ScannedRoll> rolls) =>
        [.. SyncTakes(rolls).Select(take => new RateChange(take.Take.Speed, Rate)).Where(change => !change.IsNone).Distinct()];

    /// <summary>The sync takes of some rolls, in order.</summary>
    public static IEnumerable<Layer> SyncTakes(params ImmutableArray<ScannedRoll> rolls) =>
        rolls.SelectMany(roll => roll.Roll.Layers).Where(layer => layer.Take.RunsInSync);

    static Ratio? SizeOf(Deliver? ordered) =>
        ordered?.FrameSize is { } said ? said.Value * ScannedFrame.Megabyte
        : ordered is { Raster: { } raster, Bits: { } bits } ? ScannedFrame.Bytes(raster.Value, bits.Value)
        : null;

    static bool IsScanned(RollBook roll) => roll.LabWork.Services.Any(s => LabServices.KindOf(s) == CostKind.Scan);

    static Footage FilmOf(RollBook roll, DeliveredTakes? takes) =>
        takes switch
        {
            DeliveredTakes.Good => FilmOf(roll, mark => mark == Mark.Good),
            DeliveredTakes.GoodAndHold => FilmOf(roll, mark => mark is Mark.Good or Mark.Hold),
            _ => roll.Tally.InCan,
        };

    // A wanted take is scanned whole, whatever else lies on its film; of two passes each frame once.
    static Footage FilmOf(RollBook roll, Func<Mark, bool> wanted) =>
        roll
            .Strip.Segments.Where(s => s.Layers.Any(l => wanted(l.Take.Mark.Value)))
            .Aggregate(Footage.Zero, (sum, segment) => sum + segment.Span.Length);
}
