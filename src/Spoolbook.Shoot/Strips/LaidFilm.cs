using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>What each moment of a roll's walk does to which stretch of its film.</summary>
/// <remarks>
/// <para>A take that starts farther on than the film is leaves a gap. Film that ran without an entry is booked on the
/// day of the entry that moved past it. An open door loses film on both sides of the gate. A reload loses film onwards
/// from where it is, counted as head because it is exposed in loading.</para>
/// <para>Film beyond the farthest run and the tail is left over.</para>
/// </remarks>
sealed class LaidFilm
{
    readonly RollWalk _walk;
    readonly Footage _loaded;
    readonly Func<Take, string?, double> _baseStops;

    /// <param name="baseStops">Stops from normal of a take in the body of that name.</param>
    public LaidFilm(RollWalk walk, Footage loaded, Func<Take, string?, double> baseStops)
    {
        _walk = walk;
        _loaded = loaded;
        _baseStops = baseStops;
        Lay();
    }

    public List<Layer> Layers { get; } = [];

    public List<LogContradiction> Contradictions { get; } = [];

    public List<Stretch> Stretches { get; } = [];

    public List<StrayLight> Stray { get; } = [];

    void Lay()
    {
        if (_walk.Roll.Load.Head is { } head)
        {
            CheckInside(null, head.Place, head.Value);
            Note(FrameCause.Head, new Span(Footage.Zero, head.Value), _walk.Loading);
            Pass(_walk.Loading);
        }

        foreach (var moment in _walk.Moments)
        {
            Lay(moment);
            Pass(moment);
        }

        if (_walk.TakingOut is { } takingOut)
        {
            TakeOut(_walk.Roll.Unload!, takingOut);
        }

        Note(FrameCause.Left, new Span(_walk.End.Furthest, _loaded), _walk.All.Last());
    }

    void Lay(Moment moment)
    {
        switch (moment.Entry)
        {
            case Take take:
                Shoot(take, moment);
                break;
            case Rewind rewind:
                WindBack(rewind, moment);
                break;
            case RunOff runOff:
                RunOn(runOff, moment);
                break;
            case Fog fog:
                OpenDoor(fog, moment);
                break;
            case Reload reload:
                ThreadAgain(reload, moment);
                break;
        }
    }

    void Shoot(Take take, Moment moment)
    {
        var from = moment.Starts ?? moment.From;
        var written = take.To.Value + moment.Before.Zero;
        if (take.From is { } start)
        {
            CheckInside(take, start.Place, from);
            if (from < moment.From)
            {
                Contradictions.Add(new LogContradiction(ContradictionKind.BehindStand, take, start.Place, from, moment.From));
            }
        }

        CheckInside(take, take.To.Place, written);
        if (written < from)
        {
            Contradictions.Add(new LogContradiction(ContradictionKind.EndsBeforeStart, take, take.To.Place, written, from));
        }

        var lies = new Span(from, moment.To);
        Layers.Add(
            new Layer(
                take,
                Layers.Count,
                moment.Before.Pass,
                lies.Within(_loaded),
                _baseStops(take, moment.After.Body),
                Footage.Max(Footage.Zero, take.FadeIn?.Value ?? Footage.Zero),
                Footage.Max(Footage.Zero, take.FadeOut?.Value ?? Footage.Zero),
                moment.Day,
                moment.After.Body,
                moment.By
            )
            {
                Written = lies,
                SoundRoll = take.RunsInSync || take.SoundRoll is not null ? moment.After.SoundRoll : null,
            }
        );
    }

    void WindBack(Rewind rewind, Moment moment)
    {
        CheckInside(rewind, rewind.To.Place, moment.To);
        if (moment.To > moment.From)
        {
            Contradictions.Add(new LogContradiction(ContradictionKind.WoundForward, rewind, rewind.To.Place, moment.To, moment.From));
        }

        // Out of the camera in the dark, the shutter does not matter.
        if (rewind.ShutterClosed?.Value == false && rewind.InDark?.Value != true)
        {
            LetLightIn(rewind, new Span(moment.To, moment.From));
        }
    }

    void RunOn(RunOff runOff, Moment moment)
    {
        CheckInside(runOff, runOff.To.Place, moment.To);
        if (moment.To < moment.From)
        {
            Contradictions.Add(new LogContradiction(ContradictionKind.BehindStand, runOff, runOff.To.Place, moment.To, moment.From));
        }

        // Film that went through before keeps its account: a pass in the dark changes nothing.
        Note(FrameCause.RunOff, new Span(Footage.Max(moment.From, moment.Before.Furthest), moment.To), moment);
        if (runOff.Capped?.Value == false)
        {
            LetLightIn(runOff, new Span(moment.From, moment.To));
        }
    }

    void OpenDoor(Fog fog, Moment moment)
    {
        var stand = moment.From;
        CheckInside(fog, fog.Before.Place, stand - fog.Before.Value);
        CheckInside(fog, fog.After.Place, stand + fog.After.Value);
        Note(FrameCause.Fog, new Span(stand - fog.Before.Value, stand + fog.After.Value), moment);
    }

    void ThreadAgain(Reload reload, Moment moment)
    {
        var lost = moment.From + (reload.Lost?.Value ?? Footage.Zero);
        if (reload.Lost is { } written)
        {
            CheckInside(reload, written.Place, lost);
        }

        Note(FrameCause.Head, new Span(moment.From, lost), moment);
        if (reload.To is { } stated)
        {
            CheckInside(reload, stated.Place, moment.To);
        }
    }

    // Unloading loses the film at the gate, onwards from where it is; on a roll that was run off, its very end. A roll
    // that was rewound before unloading loses its tail there, whatever is on that film.
    void TakeOut(Unload unload, Moment moment)
    {
        var tail = unload.Tail?.Value ?? Footage.Zero;
        if (tail > _loaded)
        {
            Contradictions.Add(new LogContradiction(ContradictionKind.BeyondEnd, null, unload.Tail!.Place, tail, _loaded));
        }

        var from = Footage.Min(moment.From, _loaded - tail);
        Note(FrameCause.Tail, new Span(from, from + tail), moment);
    }

    // Film that goes through the gate for the first time is a gap until an entry explains it.
    void Pass(Moment moment) => Note(FrameCause.Passed, new Span(moment.Before.Furthest, moment.To), moment);

    void Note(FrameCause kind, Span span, Moment moment)
    {
        var inside = span.Within(_loaded);
        if (!inside.IsEmpty)
        {
            Stretches.Add(new Stretch(inside, kind, new Custody(moment.Day, moment.After.Body, moment.After.By)));
        }
    }

    void LetLightIn(LogEntry entry, Span span)
    {
        var inside = span.Within(_loaded);
        if (!inside.IsEmpty)
        {
            Stray.Add(new StrayLight(entry, inside, [.. Layers.Where(l => l.Span.Overlaps(inside))]));
        }
    }

    void CheckInside(LogEntry? entry, Place place, Footage position)
    {
        if (position > _loaded)
        {
            Contradictions.Add(new LogContradiction(ContradictionKind.BeyondEnd, entry, place, position, _loaded));
        }
        else if (position < Footage.Zero)
        {
            Contradictions.Add(new LogContradiction(ContradictionKind.BeforeHead, entry, place, position, Footage.Zero));
        }
    }
}
