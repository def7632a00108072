using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>
/// A take on the film. Its exposure in stops from normal may change along it: the base, times the opening of a fade in
/// at its start and of a fade out at its end.
/// </summary>
/// <param name="Take">The take.</param>
/// <param name="Index">Its place among the takes of the roll; from 0.</param>
/// <param name="Pass">Its pass; from 1, one more after each rewind.</param>
/// <param name="Span">Its film, by the strip's positions; empty where the log puts it outside the roll.</param>
/// <param name="BaseStops">Stops from normal where no fade is under way; negative infinity under a closed shutter.</param>
/// <param name="FadeIn">Frames of its fade in; none if zero.</param>
/// <param name="FadeOut">Frames of its fade out; none if zero.</param>
/// <param name="On">The day it was shot.</param>
/// <param name="Body">The body it was shot with, by name; null where the sheet names none.</param>
/// <param name="By">Who kept the camera, by id; null where the sheet names nobody.</param>
public sealed record Layer(
    Take Take,
    int Index,
    int Pass,
    Span Span,
    double BaseStops,
    Footage FadeIn,
    Footage FadeOut,
    DateOnly On,
    string? Body,
    string? By
)
{
    /// <summary>
    /// Where the log puts the take, by the strip's positions. Differs from <see cref="Span"/> only where the take does
    /// not fit on the roll. Fades count from its ends: a take that ran out of film was cut off in its fade out.
    /// </summary>
    public Span Written { get; init; } = Span;

    /// <summary>The sound roll that its sound is on; null where it has none, or nobody wrote it down.</summary>
    public string? SoundRoll { get; init; }

    /// <summary>When and with what it was shot, and by whom.</summary>
    public Custody Custody => new(On, Body, By);

    /// <summary>The frames over which its shutter opens; empty where it has no fade in.</summary>
    public Span Opening => new(Written.From, Written.From + FadeIn);

    /// <summary>The frames over which its shutter closes; empty where it has no fade out.</summary>
    public Span Closing => new(Written.To - FadeOut, Written.To);

    /// <summary>Whether it exposed the film at all.</summary>
    public bool IsLit => !double.IsNegativeInfinity(BaseStops);

    /// <summary>The part of the full opening on one of its frames; above 0, and 1 outside its fades.</summary>
    public double OpeningAt(Footage frame) =>
        Fade.OpeningIn((frame - Opening.From).Frames, FadeIn.Frames) * Fade.OpeningOut((frame - Closing.From).Frames, FadeOut.Frames);

    /// <summary>The exposure of one of its frames, in stops from normal.</summary>
    public double StopsAt(Footage frame) => BaseStops + Stops.FromFraction(OpeningAt(frame));
}
