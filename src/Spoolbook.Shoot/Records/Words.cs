namespace Spoolbook.Shoot.Records;

/// <summary>The paper that the production prints on: <c>letter</c> or <c>a4</c>.</summary>
public enum PaperSize
{
    /// <summary>8½ × 11 inches.</summary>
    Letter,

    /// <summary>210 × 297 mm.</summary>
    A4,
}

/// <summary>The sheet that can labels are printed on, by the paper and how many labels a sheet of it holds: <c>cut</c>, <c>a4-8</c> or <c>letter-6</c>.</summary>
public enum LabelSheet
{
    /// <summary>Plain paper of the production's size, eight labels with lines to cut along.</summary>
    Cut,

    /// <summary>An A4 sheet of eight labels, 99.1 × 67.7 mm, two in a row.</summary>
    A4Eight,

    /// <summary>A letter sheet of six labels, 4 × 3⅓ inches, two in a row.</summary>
    LetterSix,
}

/// <summary>The unit in which papers tell lengths of film: <c>feet</c> or <c>metres</c>.</summary>
public enum LengthUnit
{
    /// <summary>Feet and frames.</summary>
    Feet,

    /// <summary>Metres.</summary>
    Metres,
}

/// <summary>
/// Which exposure time the production sets its meters for, once for all: <c>adapted</c> for the light that
/// the finder takes, or the time <c>marked</c> on the camera (common practice: whichever, keep to one).
/// </summary>
public enum FinderPractice
{
    /// <summary>The marked time less what the finder takes.</summary>
    Adapted,

    /// <summary>The time from shutter angle and speed alone.</summary>
    Marked,
}

/// <summary>What the sheet says of a take: <c>good</c>, <c>hold</c>, <c>ng</c> or <c>test</c>; from best to worst.</summary>
public enum Mark
{
    /// <summary>G: wanted.</summary>
    Good,

    /// <summary>H: keep until the good one is seen.</summary>
    Hold,

    /// <summary>NG: not wanted.</summary>
    NoGood,

    /// <summary>A test (scratch, focus, wedge): counted as waste.</summary>
    Test,
}

/// <summary>The light in which film was loaded or unloaded: <c>dark</c>, <c>subdued</c> or <c>bright</c>.</summary>
public enum LoadingLight
{
    /// <summary>A darkroom or changing bag.</summary>
    Dark,

    /// <summary>Shade, as a daylight spool asks for.</summary>
    Subdued,

    /// <summary>Sun or lamps on the spool.</summary>
    Bright,
}

/// <summary>The light that a stock is balanced for: <c>daylight</c>, <c>tungsten</c>, or <c>none</c> for black and white.</summary>
public enum ColourBalance
{
    /// <summary>Black and white.</summary>
    None,

    /// <summary>About 5500 K.</summary>
    Daylight,

    /// <summary>3200 K.</summary>
    Tungsten,
}

/// <summary>The light that a subject stands in: <c>daylight</c>, <c>tungsten</c> or <c>mixed</c>.</summary>
public enum SubjectLight
{
    /// <summary>About 5500 K.</summary>
    Daylight,

    /// <summary>3200 K.</summary>
    Tungsten,

    /// <summary>Both, on purpose or because it could not be helped: nothing is right for it.</summary>
    Mixed,
}

/// <summary>
/// An effect made in the camera, as the lab is told of it: <c>fade</c>, <c>dissolve</c>, <c>double-exposure</c> or <c>hand-cranked</c>.
/// </summary>
public enum DeclaredEffect
{
    /// <summary>From black or to black.</summary>
    Fade,

    /// <summary>A fade out and a fade in over one another.</summary>
    Dissolve,

    /// <summary>Two or more takes over one another.</summary>
    DoubleExposure,

    /// <summary>Speed and exposure waver.</summary>
    HandCranked,
}

/// <summary>How the spring of a body that was put away stands: <c>run-down</c> or <c>wound</c>.</summary>
public enum SpringLeft
{
    /// <summary>Without tension, as it should.</summary>
    RunDown,

    /// <summary>With some of its wind left.</summary>
    Wound,
}

/// <summary>What becomes of film left over when a roll is taken out: <c>kept</c> as a short end, or <c>thrown</c> away.</summary>
public enum Remainder
{
    /// <summary>Canned and labelled: a short end.</summary>
    Kept,

    /// <summary>Too short to be of use: waste.</summary>
    Thrown,
}

/// <summary>Where raw stock is kept cold: <c>fridge</c> or <c>freezer</c>.</summary>
public enum ColdStore
{
    /// <summary>Some degrees above freezing, up to 13 °C.</summary>
    Fridge,

    /// <summary>About −18 °C.</summary>
    Freezer,
}
