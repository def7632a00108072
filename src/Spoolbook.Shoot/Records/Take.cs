using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>Film run with the shutter working: the camera recorded something.</summary>
public sealed record Take(Place Place) : LogEntry(Place)
{
    /// <summary>The scene, as text: <c>7</c>, <c>7A</c>.</summary>
    public required Located<string> Scene { get; init; }

    /// <summary>The shot's letter within the scene; empty where shots have no letters.</summary>
    public Located<string>? Shot { get; init; }

    /// <summary>The take's number within the shot; from 1.</summary>
    public required Located<int> Number { get; init; }

    /// <summary>Where the take starts; if not written, where the film is. Counted from the sheet's zero, not from the strip's.</summary>
    public Located<Footage>? From { get; init; }

    /// <summary>Where the take ends: the first frame after it.</summary>
    public required Located<Footage> To { get; init; }

    /// <summary>The camera speed as written on this take.</summary>
    public Located<Speed>? SpeedWritten { get; init; }

    /// <summary>The speed that the camera ran at: as written, else as last set.</summary>
    public Speed Speed { get; init; }

    /// <summary>The lens, by its name in the kit.</summary>
    public Located<string>? Lens { get; init; }

    /// <summary>The stop set on the lens: <c>5.6</c>, <c>4/5.6</c>.</summary>
    public Located<Stop>? Stop { get; init; }

    /// <summary>Filters in use, by their names in the kit.</summary>
    public ImmutableArray<Located<string>> Filters { get; init; } = [];

    /// <summary>The variable shutter's mark, by its name on the body, or an open fraction as written (<c>3/4</c>).</summary>
    public Located<string>? Shutter { get; init; }

    /// <summary>The light on the subject; null where it is not written, or on the shot list.</summary>
    public Located<SubjectLight>? Light { get; init; }

    /// <summary>
    /// The mains of the lamps, in hertz, where discharge lamps on plain ballasts lit the subject (tubes, street lamps);
    /// null where it is not written, or on the shot list.
    /// </summary>
    public Located<int>? Lamps { get; init; }

    /// <summary>The exposure index that the meter was set to, if not the roll's.</summary>
    public Located<int>? Rated { get; init; }

    /// <summary>The stop that the meter gave at the take's speed with the shutter open and no filter.</summary>
    public Located<Stop>? Reading { get; init; }

    /// <summary>The meter that gave the reading, by its name in the kit.</summary>
    public Located<string>? Meter { get; init; }

    /// <summary>The exposure time that the meter was set to.</summary>
    public Located<ExposureTime>? MeteredAt { get; init; }

    /// <summary>Intended exposure, in stops from normal: −1 for one half of a double exposure.</summary>
    public Located<double>? Exposed { get; init; }

    /// <summary>Focus, measured from the film plane.</summary>
    public Located<Distance>? Focus { get; init; }

    /// <summary>The subject's distance by tape, from the film plane; for a moving subject, the nearest and the farthest.</summary>
    public ImmutableArray<Located<Distance>> Measured { get; init; } = [];

    /// <summary>The take's mark.</summary>
    public required Located<Mark> Mark { get; init; }

    /// <summary>Length of a fade in from black at the take's start, by the variable shutter.</summary>
    public Located<Footage>? FadeIn { get; init; }

    /// <summary>Length of a fade out to black at the take's end, by the variable shutter.</summary>
    public Located<Footage>? FadeOut { get; init; }

    /// <summary>Frames exposed at each press in single-frame work: 1 on ones, 2 on twos.</summary>
    public Located<int>? SingleFrames { get; init; }

    /// <summary>Seconds between exposures in time-lapse.</summary>
    public Located<Ratio>? Interval { get; init; }

    /// <summary>Seconds that the shutter was open for each frame.</summary>
    public Located<Ratio>? Timed { get; init; }

    /// <summary>Stops given beyond the reading for the stock's reciprocity failure.</summary>
    public Located<double>? Reciprocity { get; init; }

    /// <summary>Whether it was shot with sync sound.</summary>
    public Located<bool>? Sync { get; init; }

    /// <summary>Whether no sound was recorded at all, not even as a guide.</summary>
    public Located<bool>? Mute { get; init; }

    /// <summary>The sound roll, as written on this take; later takes keep it.</summary>
    public Located<string>? SoundRoll { get; init; }

    /// <summary>Where its slate is; null where it is not written.</summary>
    public Located<SlatePlace>? SlateAt { get; init; }

    /// <summary>Whether the sticks were clapped a second time: the second clap counts.</summary>
    public Located<bool>? SecondSticks { get; init; }

    /// <summary>The motor that drove the camera, by its name in the kit; null for the spring.</summary>
    public Located<string>? Motor { get; init; }

    /// <summary>Whether the spring was wound while the take ran.</summary>
    public Located<bool>? Wound { get; init; }

    /// <summary>Whether the camera was cranked by hand, with a speed and an exposure that waver intentionally.</summary>
    public Located<bool>? HandCranked { get; init; }

    /// <summary>Whether the filter slot behind the lens had its holder in; false where it was empty.</summary>
    public Located<bool>? SlotFilled { get; init; }

    /// <summary>Whether the finder was closed, or covered by an eye; false where light could come in through it.</summary>
    public Located<bool>? FinderClosed { get; init; }

    /// <summary>Who kept the camera on this take, if not the loader.</summary>
    public Located<string>? By { get; init; }

    /// <summary>The day of the take, if not that of the entry before; later entries follow it.</summary>
    public Located<DateOnly>? On { get; init; }

    /// <summary>Whether sound was recorded in step. A spring is never in sync, and neither is a hand on the crank.</summary>
    public bool RunsInSync => Sync?.Value == true && Motor is not null && HandCranked?.Value != true;

    /// <summary>Whether it says where its sound is, or that it has none.</summary>
    public bool SaysSound => SoundRoll is not null || Mute is not null;

    /// <summary>Whether the spring drove it.</summary>
    public bool IsOnSpring => Motor is null && HandCranked?.Value != true;

    /// <summary>
    /// How far the variable shutter was open: by the body's mark of that name, else as the part written (<c>3/4</c>,
    /// <c>0.75</c>, <c>75%</c>), else, on a body that lists no marks, by the usual ones. Fully open where the take says
    /// nothing; null where it names something else.
    /// </summary>
    /// <param name="body">The body that it was shot with; null where the kit does not list it.</param>
    public ShutterOpening? OpeningIn(Body? body)
    {
        if (Shutter is not { Value: var written })
        {
            return ShutterOpening.Open;
        }

        return body?.MarkNamed(written) is { } mark ? mark.Opening
            : Measure.Part(written).TryGet(out var part) ? ShutterOpening.ByOpening(written, part)
            : body is null or { ShutterMarks.IsEmpty: true } ? ShutterOpening.Named(written)
            : null;
    }

    /// <summary>Whether its frames were exposed one by one, with time between them to wind the spring.</summary>
    public bool IsFrameByFrame => SingleFrames is not null || Interval is not null || Timed is not null;

    /// <inheritdoc/>
    public override string Word => "take";

    /// <summary>The shot's name on the shot list, scene and letter together: <c>7B</c>.</summary>
    public string ShotName => Scene.Value + Shot?.Value;

    /// <summary>Whether it is a test, which is no take of a shot.</summary>
    public bool IsTest => Mark.Value == Records.Mark.Test;

    /// <summary>The slate, as spoken: <c>7B/1</c>.</summary>
    public string Slate => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Scene.Value}{Shot?.Value}/{Number.Value}");
}
