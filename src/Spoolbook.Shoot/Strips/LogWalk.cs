using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>
/// Follows the film through the log, entry by entry, and notes what each did to which stretch. One walk is
/// good for one roll.
/// </summary>
/// <remarks>
/// <para>After loading the film stands at the end of the head. A take without <c>from</c> starts where the
/// film stands; a take that starts farther on leaves a gap. A rewind moves the stand back and starts the next
/// pass; one that does not go back starts none. A run-off moves it on. An open door loses film on both sides
/// of the gate and moves nothing.</para>
/// <para>Threading again loses film onwards from the stand, counted as head because it is exposed in loading.
/// From there on a position on the sheet is read from the new zero. If it leaves the film behind where it
/// stood, that is another pass.</para>
/// <para>What lies beyond the farthest run and the tail is left over.</para>
/// </remarks>
sealed class LogWalk
{
    readonly Roll _roll;
    readonly Footage _loaded;
    readonly Func<Take, string?, double> _baseStops;
    Footage _zeroMoved;
    Hand _hand;

    /// <param name="baseStops">Stops from normal of a take in the body of that name.</param>
    public LogWalk(Roll roll, Footage loaded, Func<Take, string?, double> baseStops)
    {
        _roll = roll;
        _loaded = loaded;
        _baseStops = baseStops;
        _hand = new Hand(DateOnly.FromDateTime(roll.Load.On.Value), roll.Body?.Value, roll.Load.By?.Value);
    }

    public List<Layer> Layers { get; } = [];

    public List<Move> Moves { get; } = [];

    public List<Slip> Slips { get; } = [];

    public List<Stretch> Stretches { get; } = [];

    public List<StrayLight> Stray { get; } = [];

    public Footage Stand { get; private set; }

    public Footage Furthest { get; private set; }

    public int Pass { get; private set; } = 1;

    public void Walk()
    {
        if (_roll.Load.Head is { } head)
        {
            CheckInside(null, head.Place, head.Value);
            Note(GroundKind.Head, new Span(Footage.Zero, head.Value));
            MoveTo(head.Value);
        }

        foreach (var entry in _roll.Log)
        {
            Follow(entry);
        }

        if (_roll.Unload is { } unload)
        {
            TakeOut(unload);
        }

        Note(GroundKind.Left, new Span(Footage.Max(Furthest, Footage.Zero), _loaded));
    }

    void Follow(LogEntry entry)
    {
        var (from, pass) = (Stand, Pass);
        switch (entry)
        {
            case Take take:
                Shoot(take);
                break;
            case Rewind rewind:
                WindBack(rewind);
                break;
            case RunOff runOff:
                RunOn(runOff);
                break;
            case Fog fog:
                OpenDoor(fog);
                break;
            case Reload reload:
                ThreadAgain(reload);
                break;
        }

        Moves.Add(new Move(entry, from, Stand, pass) { ZeroMoved = _zeroMoved, Body = _hand.Body });
    }

    void Shoot(Take take)
    {
        var from = take.From is { } start ? start.Value + _zeroMoved : Stand;
        var to = take.To.Value + _zeroMoved;
        if (take.From is { } written)
        {
            CheckInside(take, written.Place, from);
            if (from < Stand)
            {
                Slips.Add(new Slip(SlipKind.BehindStand, take, written.Place, from, Stand));
            }
        }

        CheckInside(take, take.To.Place, to);
        if (to < from)
        {
            Slips.Add(new Slip(SlipKind.EndsBeforeStart, take, take.To.Place, to, from));
            to = from;
        }

        var lies = new Span(from, to);
        Layers.Add(new Layer(
            take,
            Layers.Count,
            Pass,
            lies.Within(_loaded),
            _baseStops(take, _hand.Body),
            Footage.Max(Footage.Zero, take.FadeIn?.Value ?? Footage.Zero),
            Footage.Max(Footage.Zero, take.FadeOut?.Value ?? Footage.Zero),
            take.On?.Value ?? _hand.On,
            _hand.Body,
            take.By?.Value ?? _hand.By)
        { Written = lies });
        MoveTo(to);
    }

    void WindBack(Rewind rewind)
    {
        var to = rewind.To.Value + _zeroMoved;
        CheckInside(rewind, rewind.To.Place, to);
        if (to > Stand)
        {
            Slips.Add(new Slip(SlipKind.WoundForward, rewind, rewind.To.Place, to, Stand));
        }

        // Out of the camera in the dark it does not matter how the shutter stood.
        if (rewind.ShutterClosed?.Value == false && rewind.InDark?.Value != true)
        {
            LetLightIn(rewind, new Span(to, Stand));
        }

        Pass += to < Stand ? 1 : 0;
        MoveTo(to);
    }

    void RunOn(RunOff runOff)
    {
        var to = runOff.To.Value + _zeroMoved;
        CheckInside(runOff, runOff.To.Place, to);
        if (to < Stand)
        {
            Slips.Add(new Slip(SlipKind.BehindStand, runOff, runOff.To.Place, to, Stand));
        }

        // Film that had gone through before keeps the name that it got then: a pass in the dark changes nothing.
        Note(GroundKind.RunOff, new Span(Footage.Max(Stand, Furthest), to));
        if (runOff.Capped?.Value == false)
        {
            LetLightIn(runOff, new Span(Stand, to));
        }

        MoveTo(to);
    }

    void OpenDoor(Fog fog)
    {
        CheckInside(fog, fog.Before.Place, Stand - fog.Before.Value);
        CheckInside(fog, fog.After.Place, Stand + fog.After.Value);
        Note(GroundKind.Fog, new Span(Stand - fog.Before.Value, Stand + fog.After.Value));
    }

    void ThreadAgain(Reload reload)
    {
        var lost = reload.Lost?.Value ?? Footage.Zero;
        _zeroMoved += reload.ZeroMoved?.Value ?? Footage.Zero;
        _hand = new Hand(
            reload.On is { } when ? DateOnly.FromDateTime(when.Value) : _hand.On,
            reload.Body?.Value ?? _hand.Body,
            reload.By?.Value ?? _hand.By);
        if (reload.Lost is { } written)
        {
            CheckInside(reload, written.Place, Stand + lost);
        }

        Note(GroundKind.Head, new Span(Stand, Stand + lost));
        var to = reload.To is { } threaded ? threaded.Value + _zeroMoved : Stand + lost;
        if (reload.To is { } stated)
        {
            CheckInside(reload, stated.Place, to);
        }

        Pass += to < Stand ? 1 : 0;
        MoveTo(to);
    }

    // In unloading the film at the gate is lost, onwards from where it stood; on a roll run off, its very end.
    // A roll wound back before it is taken out loses its tail there, over whatever is on that film.
    void TakeOut(Unload unload)
    {
        _hand = new Hand(DateOnly.FromDateTime(unload.On.Value), _hand.Body, unload.By?.Value ?? _hand.By);
        var tail = unload.Tail?.Value ?? Footage.Zero;
        if (tail > _loaded)
        {
            Slips.Add(new Slip(SlipKind.BeyondEnd, null, unload.Tail!.Place, tail, _loaded));
        }

        var from = Footage.Min(Stand, _loaded - tail);
        Note(GroundKind.Tail, new Span(from, from + tail));
    }

    // Film that goes through the gate for the first time is a gap until something is said of it.
    void MoveTo(Footage position)
    {
        Note(GroundKind.Passed, new Span(Furthest, position));
        Stand = position;
        Furthest = Footage.Max(Furthest, position);
    }

    void Note(GroundKind kind, Span span)
    {
        var inside = span.Within(_loaded);
        if (!inside.IsEmpty)
        {
            Stretches.Add(new Stretch(inside, kind, _hand));
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
            Slips.Add(new Slip(SlipKind.BeyondEnd, entry, place, position, _loaded));
        }
        else if (position < Footage.Zero)
        {
            Slips.Add(new Slip(SlipKind.BeforeHead, entry, place, position, Footage.Zero));
        }
    }
}
