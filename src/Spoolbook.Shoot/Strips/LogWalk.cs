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
/// </remarks>
sealed class LogWalk
{
    readonly Roll _roll;
    readonly Footage _loaded;
    readonly Func<Take, string?, double> _baseStops;
    Footage _zeroMoved;
    string? _body;
    string? _by;
    DateOnly _on;

    /// <param name="baseStops">Stops from normal of a take in the body of that name.</param>
    public LogWalk(Roll roll, Footage loaded, Func<Take, string?, double> baseStops)
    {
        _roll = roll;
        _loaded = loaded;
        _baseStops = baseStops;
        _body = roll.Body?.Value;
        _by = roll.Load.By?.Value;
        _on = DateOnly.FromDateTime(roll.Load.On.Value);
    }

    public List<Layer> Layers { get; } = [];

    public List<Move> Moves { get; } = [];

    public List<Slip> Slips { get; } = [];

    public List<Span> Heads { get; } = [];

    public List<Span> RunOffs { get; } = [];

    public List<Span> Fogged { get; } = [];

    public List<(LogEntry Entry, Span Span, int LayersBefore)> Stray { get; } = [];

    public Footage Stand { get; private set; }

    public Footage Furthest { get; private set; }

    public int Pass { get; private set; } = 1;

    public void Walk()
    {
        if (_roll.Load.Head is { } head)
        {
            CheckInside(null, head.Place, head.Value);
            Lose(Heads, new Span(Footage.Zero, head.Value));
            MoveTo(head.Value);
        }

        foreach (var entry in _roll.Log)
        {
            Follow(entry);
        }
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

        Moves.Add(new Move(entry, from, Stand, pass) { ZeroMoved = _zeroMoved, Body = _body });
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
            _baseStops(take, _body),
            take.FadeIn?.Value ?? Footage.Zero,
            take.FadeOut?.Value ?? Footage.Zero,
            take.On?.Value ?? _on,
            _body,
            take.By?.Value ?? _by)
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

        var run = new Span(Stand, to);
        Lose(RunOffs, run);
        if (runOff.Capped?.Value == false)
        {
            LetLightIn(runOff, run);
        }

        MoveTo(to);
    }

    void OpenDoor(Fog fog)
    {
        CheckInside(fog, fog.Before.Place, Stand - fog.Before.Value);
        CheckInside(fog, fog.After.Place, Stand + fog.After.Value);
        Lose(Fogged, new Span(Stand - fog.Before.Value, Stand + fog.After.Value));
    }

    void ThreadAgain(Reload reload)
    {
        var lost = reload.Lost?.Value ?? Footage.Zero;
        _zeroMoved += reload.ZeroMoved?.Value ?? Footage.Zero;
        _body = reload.Body?.Value ?? _body;
        _by = reload.By?.Value ?? _by;
        _on = reload.On is { } when ? DateOnly.FromDateTime(when.Value) : _on;
        if (reload.Lost is { } written)
        {
            CheckInside(reload, written.Place, Stand + lost);
        }

        Lose(Heads, new Span(Stand, Stand + lost));
        var to = reload.To is { } threaded ? threaded.Value + _zeroMoved : Stand + lost;
        if (reload.To is { } stated)
        {
            CheckInside(reload, stated.Place, to);
        }

        Pass += to < Stand ? 1 : 0;
        MoveTo(to);
    }

    void MoveTo(Footage position)
    {
        Stand = position;
        Furthest = Footage.Max(Furthest, position);
    }

    void Lose(List<Span> stretches, Span span)
    {
        var inside = span.Within(_loaded);
        if (!inside.IsEmpty)
        {
            stretches.Add(inside);
        }
    }

    void LetLightIn(LogEntry entry, Span span)
    {
        var inside = span.Within(_loaded);
        if (!inside.IsEmpty)
        {
            Stray.Add((entry, inside, Layers.Count));
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
