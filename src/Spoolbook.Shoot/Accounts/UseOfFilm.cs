using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>How well film was used: a tally, and the figures that a producer judges a shoot by.</summary>
public sealed record UseOfFilm
{
    /// <summary>The account of the film.</summary>
    public required Tally Tally { get; init; }

    /// <summary>Takes shot, and tests.</summary>
    public required int Takes { get; init; }

    /// <summary>Tests among them.</summary>
    public required int Tests { get; init; }

    /// <summary>Shots with these takes, scene and letter together; a test is of none.</summary>
    public required int Shots { get; init; }

    /// <summary>Screen time of the good film in seconds, at the projection speed.</summary>
    public required Ratio ScreenTime { get; init; }

    /// <summary>Film of the planned running time at the projection speed; null without a plan, or for a part of the shoot.</summary>
    public Ratio? PlannedFrames { get; init; }

    /// <summary>Film exposed, including waste, to good film: the n of n:1; null without good film.</summary>
    public Ratio? ExposedToGood => Over(Tally.Exposed.Frames, Tally.Good.Frames);

    /// <summary>Film exposed, including waste, to the film of the planned running time: the n of n:1; null without a plan.</summary>
    public Ratio? ExposedToPlanned => PlannedFrames is { } planned ? Over(Tally.Exposed.Frames, planned) : null;

    /// <summary>Takes for each shot, without tests; null without a shot.</summary>
    public Ratio? TakesAShot => Over(Takes - Tests, Shots);

    /// <summary>The part of the film exposed that is waste; null where none is exposed.</summary>
    public Ratio? WasteRate => Over(Tally.Waste.Frames, Tally.Exposed.Frames);

    /// <summary>The use of film of the whole shoot.</summary>
    public static UseOfFilm Of(ShootBook book)
    {
        var production = book.Production;
        var layers = book.Counted.SelectMany(r => r.Layers);
        return Of(book.Total, layers, production.ProjectedAt) with
        {
            PlannedFrames = production.RunningTime is { } time ? time.Value * production.ProjectedAt.FramesPerSecond : null,
        };
    }

    /// <summary>The use of film of a part of the shoot: its tally and its takes.</summary>
    public static UseOfFilm Of(Tally tally, IEnumerable<Layer> takes, Speed projectedAt)
    {
        var all = takes.Select(l => l.Take).ToList();
        return new UseOfFilm
        {
            Tally = tally,
            Takes = all.Count,
            Tests = all.Count(t => t.IsTest),
            Shots = all.Where(t => !t.IsTest).Select(t => t.ShotName).Distinct(StringComparer.Ordinal).Count(),
            ScreenTime = tally.Good.Frames / projectedAt.FramesPerSecond,
        };
    }

    /// <summary>
    /// The use of film by scene, day, lot, body or assistant, split up and ordered by <see cref="Shares"/>, film
    /// without a key last. A take without a frame of its own (another covers all of it, or it is not on the roll) still
    /// counts.
    /// </summary>
    public static ImmutableArray<UseOfPart> By(ShootBook book, Sharing sharing)
    {
        var film = book.By(sharing);
        var takes = book
            .Counted.SelectMany(r => r.Layers.Select(l => (Key: KeyOf(book, r, l, sharing), Layer: l)))
            .ToLookup(t => t.Key, t => t.Layer);
        var tallies = film.ToLookup(s => s.Key, s => s.Tally);
        return
        [
            .. film.Select(s => s.Key)
                .Union(takes.Select(g => g.Key))
                .OrderBy(key => key, NameOrder.Instance)
                .Select(key => new UseOfPart(
                    key,
                    Of(tallies[key].FirstOrDefault() ?? Tally.Empty, takes[key], book.Production.ProjectedAt)
                )),
        ];
    }

    static string? KeyOf(ShootBook book, RollBook roll, Layer layer, Sharing sharing) =>
        sharing switch
        {
            Sharing.Scene => layer.Take.Scene.Value,
            Sharing.Day => layer.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Sharing.Lot => book.Production.LotOf(roll.Roll)?.Name.Value,
            Sharing.Body => layer.Body,
            Sharing.Assistant => layer.By,
            _ => throw new ArgumentOutOfRangeException(nameof(sharing), "Takes are counted by scene, day, lot, body or assistant."),
        };

    static Ratio? Over(Ratio above, Ratio below) => below.Sign == 0 ? null : above / below;
}
