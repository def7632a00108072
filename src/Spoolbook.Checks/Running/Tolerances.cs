using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>
/// Every threshold of every check: name, kind, figure, what passes, and why. A check asks
/// <c>context.Of(Tolerances.SpringSlack)</c>, and its page names the tolerance in backquotes.
/// </summary>
public static class Tolerances
{
    // The declarations below fill it, so it must come first.
    static readonly List<Tolerance> _declared = [];

    public static readonly Tolerance<Footage> RewindNear = Declare(
        "rewind-near",
        ToleranceKind.Length,
        new Footage(24),
        "A second pass that starts this near to the start of an earlier take, and not on it, was meant to start on it.",
        "A second of film: what a hand on the rewind key misses; farther away is a choice (common practice)."
    );

    public static readonly Tolerance<Footage> SpringSlack = Declare(
        "spring-slack",
        ToleranceKind.Length,
        new Footage(20),
        "Film beyond a full wind that is let pass.",
        "The kit's figure is a round one, and no two springs are alike (common practice)."
    );

    public static readonly Tolerance<long> CounterSlack = Declare(
        "counter-slack",
        ToleranceKind.Count,
        2,
        "Frames that a frame counter may be out.",
        "It is read by eye while the camera coasts to a stop (common practice)."
    );

    public static readonly Tolerance<Footage> PassSlack = Declare(
        "pass-slack",
        ToleranceKind.Length,
        new Footage(12),
        "Frames of the next take that a second pass may run into.",
        "A hand stops half a second late (common practice)."
    );

    public static readonly Tolerance<double> DissolveLevel = Declare(
        "dissolve-level",
        ToleranceKind.Stops,
        1 / 6.0,
        "Stops that a dissolve may dip or bump.",
        "Half of the third that lenses and meters are marked in, which nobody sees in a moving picture (common practice)."
    );

    public static readonly Tolerance<double> CompositeOver = Declare(
        "composite-over",
        ToleranceKind.Stops,
        0.7,
        "Stops over that passes may come to together.",
        "As much as a print takes without looking washed out (common practice)."
    );

    public static readonly Tolerance<double> CompositeUnder = Declare(
        "composite-under",
        ToleranceKind.Stops,
        0.7,
        "Stops under that passes may come to together.",
        "As much as a print takes without looking dull (common practice)."
    );

    public static readonly Tolerance<double> NegativeOver = Declare(
        "negative-over",
        ToleranceKind.Stops,
        1.5,
        "Stops over that negative forgives.",
        "Negative rather over than under (common practice)."
    );

    public static readonly Tolerance<double> NegativeUnder = Declare(
        "negative-under",
        ToleranceKind.Stops,
        0.7,
        "Stops under that negative forgives.",
        "Two thirds, and a hair for thirds written as decimals (common practice)."
    );

    public static readonly Tolerance<double> ReversalLatitude = Declare(
        "reversal-latitude",
        ToleranceKind.Stops,
        0.55,
        "Stops either way that reversal forgives.",
        "Half a stop, and a hair for what is written in decimals (common practice)."
    );

    public static readonly Tolerance<double> RatedUp = Declare(
        "rated-up",
        ToleranceKind.Stops,
        0.5,
        "Stops that a roll may be rated faster than it is pushed.",
        "The thirds that meters are set in, and no more (common practice)."
    );

    public static readonly Tolerance<long> PrismFocal = Declare(
        "prism-focal",
        ToleranceKind.Count,
        50,
        "Millimetres of focal length up to which glass behind the lens matters.",
        "Makers computed lenses of 50 mm and less anew for prism finders, and sold longer ones for both (from memory)."
    );

    public static readonly Tolerance<double> BalanceMireds = Declare(
        "balance-mireds",
        ToleranceKind.Mireds,
        LightMatch.UsualMireds,
        "How far film and filter may be from the light, in mireds.",
        "Half of the step from daylight to tungsten, so that a warming filter, or an 85C for an 85, is taste and a missing 85 is not "
            + "(common practice)."
    );

    public static readonly Tolerance<double> MeterTime = Declare(
        "meter-time",
        ToleranceKind.Stops,
        1 / 6.0,
        "Stops that the time set on the meter may be from the camera's.",
        "Meters are marked in thirds, and half of one tells the marked time from the adapted (common practice)."
    );

    public static readonly Tolerance<double> ReciprocityShort = Declare(
        "reciprocity-short",
        ToleranceKind.Stops,
        0.25,
        "Stops for reciprocity failure that may be missing.",
        "Less than the third that a lens is set in (common practice)."
    );

    public static readonly Tolerance<double> RatingMixed = Declare(
        "rating-mixed",
        ToleranceKind.Stops,
        0.4,
        "Stops that the rating may change by within one development.",
        "A step of the meter's dial, a third, and a hair (common practice)."
    );

    public static readonly Tolerance<Ratio> TapeSlack = Declare(
        "tape-slack",
        ToleranceKind.Part,
        new Ratio(2, 100),
        "The part of its distance by which a subject may be out of the depth of field, or a focus nearer than the lens goes.",
        "A tape is read to a finger's breadth (common practice)."
    );

    public static readonly Tolerance<long> ShotsToGoOn = Declare(
        "shots-to-go-on",
        ToleranceKind.Count,
        FilmForecast.UsualShotsToGoOn,
        "Finished shots that an average needs before it tells something.",
        "On the first day everything takes long (common practice)."
    );

    public static readonly Tolerance<Footage> ShortEndLeast = Declare(
        "short-end-least",
        ToleranceKind.Length,
        new Footage(400),
        "Film that a short end has to hold to be worth a can.",
        "Six feet of 16 mm go in loading and unloading, and a shot wants a few more (common practice)."
    );

    public static readonly Tolerance<Footage> ShortEndSlack = Declare(
        "short-end-slack",
        ToleranceKind.Length,
        BookSlack.Usual.ShortEnd,
        "Film by which a short end may be longer or shorter than what its roll left.",
        "A spool holds some feet more than its can says, and a short end is measured by eye (common practice)."
    );

    public static readonly Tolerance<Ratio> TotalsSlack = Declare(
        "totals-slack",
        ToleranceKind.Part,
        new Ratio(1, 2),
        "The part of the last place written (of a foot, where whole feet are written) by which a box at the foot of a sheet may be out.",
        "A sum is rounded once, when it is written down; where frames are written, nothing is rounded (common practice)."
    );

    public static readonly Tolerance<Footage> EndsLeast = Declare(
        "ends-least",
        ToleranceKind.Length,
        new Footage(40),
        "Film that is lost at least at the head or the tail of a roll that was loaded or taken out in light.",
        "A few feet are exposed in loading and unloading (common practice); a daylight roll has some five of leader at each end "
            + "(Movie Making Made Easy, 1937). Less than one is a slip of the pen."
    );

    public static readonly Tolerance<Footage> EndsMost = Declare(
        "ends-most",
        ToleranceKind.Length,
        new Footage(480),
        "Film that is lost at most at the head or the tail of a roll.",
        "A daylight roll has some five feet of leader at each end (Movie Making Made Easy, 1937), and a few more are run off to be "
            + "sure; twelve feet of 16 mm are more than both (common practice)."
    );

    public static readonly Tolerance<Footage> GapSlack = Declare(
        "gap-slack",
        ToleranceKind.Length,
        BookSlack.Usual.Leftover,
        "Film that may run between two takes without a word.",
        "Positions are read off a dial in whole feet, and a camera coasts (common practice)."
    );

    public static readonly Tolerance<Footage> DialSlack = Declare(
        "dial-slack",
        ToleranceKind.Length,
        new Footage(60),
        "Film by which one reading of a footage dial may be out.",
        "A dial is read in whole feet, at a slant and in a hurry (common practice)."
    );

    public static readonly Tolerance<Ratio> DialDrift = Declare(
        "dial-drift",
        ToleranceKind.Part,
        new Ratio(3, 100),
        "The part of the film's length by which a footage dial may run away.",
        "Three feet on a daylight spool: less than its head and tail (common practice)."
    );

    public static readonly Tolerance<Ratio> ClockSlack = Declare(
        "clock-slack",
        ToleranceKind.Time,
        new Ratio(300, 1),
        "Time by which the hours on a sheet may go back.",
        "Two people look at two watches (common practice)."
    );

    public static readonly Tolerance<Ratio> SetUpTime = Declare(
        "set-up-time",
        ToleranceKind.Time,
        new Ratio(60, 1),
        "Time that a new set-up takes at least: another shot, lens or filter.",
        "Nobody moves the camera, changes a lens and slates within the same minute (common practice)."
    );

    public static readonly Tolerance<Footage> SpringReserve = Declare(
        "spring-reserve",
        ToleranceKind.Length,
        new Footage(20),
        "Film that a spring should still drive at the end of a take.",
        "In its last turns a spring slows before it stops, and no two are alike (common practice)."
    );

    public static readonly Tolerance<Ratio> SpeedsAlike = Declare(
        "speeds-alike",
        ToleranceKind.Part,
        new Ratio(10, 100),
        "The part by which two speeds may differ and still be meant to be one.",
        "24 for 25 is a slip; nobody shoots slow motion by a tenth (common practice)."
    );

    public static readonly Tolerance<Ratio> FlickerSlack = Declare(
        "flicker-slack",
        ToleranceKind.Part,
        new Ratio(2, 100),
        "The part of its time by which a frame may miss a whole number of pulses of the light.",
        "So that 175 degrees pass where 172.8 are right, and 180 do not (computed)."
    );

    public static readonly Tolerance<Ratio> TransportTime = Declare(
        "transport-time",
        ToleranceKind.Time,
        TimeLapse.UsualTransport,
        "Time that a camera takes to move the film for one frame.",
        "A whole turn at 8 frames a second, as single frames are commonly exposed (common practice)."
    );

    public static readonly Tolerance<long> DaysInWarm = Declare(
        "days-in-warm",
        ToleranceKind.Count,
        30,
        "Days that stock may be out of the cold before it is loaded.",
        "Makers give 13 °C or lower for up to six months and no time for a warm room (Kodak, H-1-5218t, 2006); a month is from memory: "
            + "set what your stock's maker or your department says."
    );

    public static readonly Tolerance<long> DaysToLab = Declare(
        "days-to-lab",
        ToleranceKind.Count,
        14,
        "Days from the first exposure of a roll to the lab, without a fridge.",
        "Makers ask that exposed film is processed promptly (Kodak, Cinematographer's Field Guide, p. 16; The Essential Reference Guide, "
            + "ch. 11) and give no days; two weeks are from memory."
    );

    public static readonly Tolerance<long> DaysToLabCold = Declare(
        "days-to-lab-cold",
        ToleranceKind.Count,
        60,
        "Days from the first exposure of a roll to the lab, where it went into the fridge.",
        "Exposed film that has to wait goes into a fridge (Kodak, Cinematographer's Field Guide, p. 16); two months are from memory."
    );

    public static readonly Tolerance<long> DaysInCamera = Declare(
        "days-in-camera",
        ToleranceKind.Count,
        30,
        "Days that a roll may be in the camera.",
        "Makers ask that film is not in a camera longer than needed (Kodak, Cinematographer's Field Guide, p. 16) and give no days; a "
            + "month, for single frames over several weekends, is from memory."
    );

    public static readonly Tolerance<Ratio> WarmUpShort = Declare(
        "warm-up-short",
        ToleranceKind.Time,
        600,
        "Time by which the warming up of stock may be too short.",
        "Nobody writes the log by the second, and the maker's times are round ones (common practice)."
    );

    public static readonly Tolerance<long> XRayPasses = Declare(
        "x-ray-passes",
        ToleranceKind.Count,
        0,
        "X-ray inspections that stock may have been through.",
        "Fog can be measured in motion picture camera film after a single one (Kodak, TIB5201, 2003)."
    );

    /// <summary>The books of a production, kept by its own tolerances.</summary>
    public static Books BooksOf(Production production) =>
        Books.Of(production, ShotsToGoOn.For(production), BalanceMireds.For(production), SlackFor(production));

    /// <summary>The lengths too small for a production's books.</summary>
    static BookSlack SlackFor(Production production) =>
        new() { Leftover = GapSlack.For(production), ShortEnd = ShortEndSlack.For(production) };

    /// <summary>All of them, by name.</summary>
    public static ImmutableArray<Tolerance> All { get; } = [.. _declared.OrderBy(t => t.Name, StringComparer.Ordinal)];

    /// <summary>The tolerance of that name, or null.</summary>
    public static Tolerance? Named(string name) => All.FirstOrDefault(t => t.Name == name);

    static Tolerance<T> Declare<T>(string name, ToleranceKind<T> kind, T usual, string says, string source)
    {
        var tolerance = new Tolerance<T>(name, kind, usual, says, source);
        _declared.Add(tolerance);
        return tolerance;
    }
}
