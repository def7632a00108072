using Spoolbook.Film;

namespace Spoolbook.Checks.Running;

/// <summary>How far something may be out before a check speaks. Every threshold of every check stands here, with its reason.</summary>
public sealed record Tolerances
{
    /// <summary>
    /// A second pass that starts this near to the start of an earlier take, and not on it, was meant to start
    /// on it. A second of film: what a hand on the rewind key misses; farther away is a choice.
    /// </summary>
    public Footage RewindNear { get; init; } = new(24);

    /// <summary>
    /// Film beyond a full wind that is let pass: the kit's figure is a round one, and no two springs are alike.
    /// </summary>
    public Footage SpringSlack { get; init; } = new(20);

    /// <summary>Frames that a frame counter may be out: it is read by eye while the camera coasts to a stop.</summary>
    public long CounterSlack { get; init; } = 2;

    /// <summary>Frames of the next take that a second pass may run into: a hand stops half a second late.</summary>
    public Footage PassSlack { get; init; } = new(12);

    /// <summary>
    /// Stops that a dissolve may dip or bump: half of the third that lenses and meters are marked in, which
    /// nobody sees in a moving picture.
    /// </summary>
    public double DissolveLevel { get; init; } = 1 / 6.0;

    /// <summary>Stops over that passes may come to together: as much as a print takes without looking washed out.</summary>
    public double CompositeOver { get; init; } = 0.7;

    /// <summary>Stops under that passes may come to together.</summary>
    public double CompositeUnder { get; init; } = 0.7;

    /// <summary>Stops over that negative forgives (common practice: negative rather over than under).</summary>
    public double NegativeOver { get; init; } = 1.5;

    /// <summary>Stops under that negative forgives: two thirds, and a hair for thirds written as decimals.</summary>
    public double NegativeUnder { get; init; } = 0.7;

    /// <summary>Stops either way that reversal forgives (common practice: half a stop).</summary>
    public double ReversalLatitude { get; init; } = 0.55;

    /// <summary>Stops that a roll may be rated faster than it is pushed: the thirds that meters are set in, and no more.</summary>
    public double RatedUp { get; init; } = 0.5;

    /// <summary>
    /// Mireds that film, filter and light may be apart: half of the step from daylight to tungsten, so that a
    /// warming filter, or an 85C for an 85, is taste and a missing 85 is not.
    /// </summary>
    public double BalanceMireds { get; init; } = 65;

    /// <summary>
    /// Stops that the time set on the meter may be from the camera's: meters are marked in thirds, and half of
    /// one tells the marked time from the adapted.
    /// </summary>
    public double MeterTime { get; init; } = 1 / 6.0;

    /// <summary>Stops for reciprocity failure that may be missing: less than the third that a lens is set in.</summary>
    public double ReciprocityShort { get; init; } = 0.25;

    /// <summary>Stops that the rating may change by within one development: a step of the meter's dial, a third, and a hair.</summary>
    public double RatingMixed { get; init; } = 0.4;

    /// <summary>The part of its distance by which a subject may be out of the depth of field: a tape is read to a finger's breadth.</summary>
    public double TapeSlack { get; init; } = 0.02;

    /// <summary>Finished shots that an average needs before it tells something: on the first day everything takes long.</summary>
    public long ShotsToGoOn { get; init; } = 5;
}
