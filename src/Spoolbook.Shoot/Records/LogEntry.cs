using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>One thing that happened to a roll, in the order of the log.</summary>
/// <param name="Place">The whole entry's first line.</param>
public abstract record LogEntry(Place Place)
{
    /// <summary>The time of day, if it was written down.</summary>
    public Located<TimeOnly>? At { get; init; }

    /// <summary>The shooting day that it is booked on, where that is not the day that follows from its date or from the entry before it.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>The frame counter's reading at the end of the entry, if it was written down.</summary>
    public Located<long>? Counter { get; init; }

    /// <summary>The footage dial's reading at the end of the entry, if it was written down.</summary>
    public Located<Footage>? Dial { get; init; }

    /// <summary>Remarks.</summary>
    public Located<string>? Note { get; init; }

    /// <summary>The key that the entry is written under: <c>take</c>, <c>rewind</c>, …</summary>
    public abstract string Word { get; }
}

/// <summary>Film run with the shutter working: the camera recorded something.</summary>
public sealed record Take(Place Place) : LogEntry(Place)
{
    /// <summary>The scene, as text: <c>7</c>, <c>7A</c>.</summary>
    public required Located<string> Scene { get; init; }

    /// <summary>The shot's letter within the scene; empty where the production does not letter its shots.</summary>
    public Located<string>? Shot { get; init; }

    /// <summary>The take's number within the shot; from 1.</summary>
    public required Located<int> Number { get; init; }

    /// <summary>Where the take starts, if written; else where the film stood. Counter position, before any re-threading is counted.</summary>
    public Located<Footage>? From { get; init; }

    /// <summary>Where the take ends: the first frame after it.</summary>
    public required Located<Footage> To { get; init; }

    /// <summary>The camera speed as written on this take.</summary>
    public Located<Speed>? SpeedWritten { get; init; }

    /// <summary>The speed the camera ran at: as written, else as it was last set.</summary>
    public Speed Speed { get; init; }

    /// <summary>The lens by its name in the kit.</summary>
    public Located<string>? Lens { get; init; }

    /// <summary>The stop set on the lens: <c>5.6</c>, <c>4/5.6</c>.</summary>
    public Located<Stop>? Stop { get; init; }

    /// <summary>Filters in the light's way, by their names in the kit.</summary>
    public ImmutableArray<Located<string>> Filters { get; init; } = [];

    /// <summary>The variable shutter's mark, by its name on the body, or an open fraction as written (<c>3/4</c>).</summary>
    public Located<string>? Shutter { get; init; }

    /// <summary>The light that the subject stood in; null where nobody said, or the shot list does.</summary>
    public Located<SubjectLight>? Light { get; init; }

    /// <summary>
    /// The mains that fed the lamps, in hertz, where discharge lamps on plain ballasts lit the subject (tubes, street
    /// lamps); null where nobody said, or the shot list does.
    /// </summary>
    public Located<int>? Lamps { get; init; }

    /// <summary>The exposure index that the meter was set to for the take, if not the roll's.</summary>
    public Located<int>? Rated { get; init; }

    /// <summary>The stop that the meter asked for at the take's speed with the shutter open and no filter.</summary>
    public Located<Stop>? Reading { get; init; }

    /// <summary>The meter that gave the reading, by its name in the kit.</summary>
    public Located<string>? Meter { get; init; }

    /// <summary>The exposure time that the meter was set to.</summary>
    public Located<ExposureTime>? MeteredAt { get; init; }

    /// <summary>Exposure meant for the take, in stops from normal: −1 for the half of a double exposure.</summary>
    public Located<double>? Exposed { get; init; }

    /// <summary>Focus, measured from the film plane.</summary>
    public Located<Distance>? Focus { get; init; }

    /// <summary>The subject's distance by the tape, from the film plane; the nearest and the farthest of a subject that moves.</summary>
    public ImmutableArray<Located<Distance>> Measured { get; init; } = [];

    /// <summary>What the sheet says of the take.</summary>
    public required Located<Mark> Mark { get; init; }

    /// <summary>Length of a fade in from black at the take's start, by the variable shutter.</summary>
    public Located<Footage>? FadeIn { get; init; }

    /// <summary>Length of a fade out to black at the take's end, by the variable shutter.</summary>
    public Located<Footage>? FadeOut { get; init; }

    /// <summary>Frames exposed at each press in single-frame work: 1 on ones, 2 on twos.</summary>
    public Located<int>? SingleFrames { get; init; }

    /// <summary>Seconds between exposures in time-lapse.</summary>
    public Located<Ratio>? Interval { get; init; }

    /// <summary>Seconds that the shutter was held open for each frame.</summary>
    public Located<Ratio>? Timed { get; init; }

    /// <summary>Stops that were given beside the reading for the stock's reciprocity failure.</summary>
    public Located<double>? Reciprocity { get; init; }

    /// <summary>Whether sound was recorded in step.</summary>
    public Located<bool>? Sync { get; init; }

    /// <summary>The motor that drove the camera, by its name in the kit; the spring if none.</summary>
    public Located<string>? Motor { get; init; }

    /// <summary>Whether the camera was cranked by hand: its speed, and with it the exposure, wavers on purpose.</summary>
    public Located<bool>? HandCranked { get; init; }

    /// <summary>Whether the slot for filters behind the lens held its holder; false where it stood empty.</summary>
    public Located<bool>? SlotFilled { get; init; }

    /// <summary>Whether the finder was closed, or covered by an eye; false where light could come in through it.</summary>
    public Located<bool>? FinderClosed { get; init; }

    /// <summary>Who kept the camera on this take, if not who loaded.</summary>
    public Located<string>? By { get; init; }

    /// <summary>The day of the take, if not that of the entry before it; the entries after it follow.</summary>
    public Located<DateOnly>? On { get; init; }

    /// <summary>Whether the spring drove it.</summary>
    public bool IsOnSpring => Motor is null && HandCranked?.Value != true;

    /// <inheritdoc/>
    public override string Word => "take";

    /// <summary>The shot as the shot list names it, scene and letter together: <c>7B</c>.</summary>
    public string ShotName => Scene.Value + Shot?.Value;

    /// <summary>The slate as it is said: <c>7B/1</c>.</summary>
    public string Slate => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Scene.Value}{Shot?.Value}/{Number.Value}");
}

/// <summary>Film wound back for another pass.</summary>
public sealed record Rewind(Place Place) : LogEntry(Place)
{
    /// <summary>Where the film stands after it.</summary>
    public required Located<Footage> To { get; init; }

    /// <summary>Whether the variable shutter was closed, so that no frame saw light twice.</summary>
    public Located<bool>? ShutterClosed { get; init; }

    /// <summary>Whether the roll was wound back in the dark, out of the camera or in a bag.</summary>
    public Located<bool>? InDark { get; init; }

    /// <summary>Whether the frame counter was set to zero before the pass that is wound back.</summary>
    public Located<bool>? CounterZeroed { get; init; }

    /// <inheritdoc/>
    public override string Word => "rewind";
}

/// <summary>Film run without a picture, lens capped, to reach a place or to empty the spool.</summary>
public sealed record RunOff(Place Place) : LogEntry(Place)
{
    /// <summary>Where the film stands after it.</summary>
    public required Located<Footage> To { get; init; }

    /// <summary>Whether the lens was capped: frames already exposed take no more light.</summary>
    public Located<bool>? Capped { get; init; }

    /// <inheritdoc/>
    public override string Word => "run-off";
}

/// <summary>The door was opened in the light: film on both sides of the gate is lost.</summary>
public sealed record Fog(Place Place) : LogEntry(Place)
{
    /// <summary>Film lost that had gone through the gate (towards the head).</summary>
    public required Located<Footage> Before { get; init; }

    /// <summary>Film lost that had not yet gone through (towards the tail).</summary>
    public required Located<Footage> After { get; init; }

    /// <inheritdoc/>
    public override string Word => "fog";
}

/// <summary>The spring was wound to the full.</summary>
public sealed record Wind(Place Place) : LogEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "wind";
}

/// <summary>Something to remember, with no film run.</summary>
public sealed record Remark(Place Place) : LogEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "note";
}

/// <summary>
/// The half-shot roll was taken out and threaded again, in the same or another body. Positions written
/// after it are read from the new zero.
/// </summary>
public sealed record Reload(Place Place) : LogEntry(Place)
{
    /// <summary>When.</summary>
    public Located<DateTime>? On { get; init; }

    /// <summary>Who threaded it.</summary>
    public Located<string>? By { get; init; }

    /// <summary>The body it went into, if another.</summary>
    public Located<string>? Body { get; init; }

    /// <summary>The light it was done in.</summary>
    public Located<LoadingLight>? Light { get; init; }

    /// <summary>
    /// How much farther down the film the new zero lies: a position p written after this entry is
    /// p + ZeroMoved on the film. Zero where the punched frame was found again; null where nobody said.
    /// </summary>
    public Located<Footage>? ZeroMoved { get; init; }

    /// <summary>Film lost to light in taking out and threading again, onwards from where the film stood.</summary>
    public Located<Footage>? Lost { get; init; }

    /// <summary>Where the film stands after threading, in the new counting; else where it stood plus what was lost.</summary>
    public Located<Footage>? To { get; init; }

    /// <inheritdoc/>
    public override string Word => "reload";
}
