namespace Spoolbook.Shoot.Accounts;

/// <summary>Where film that came to a shoot is in the end.</summary>
public enum FilmPlace
{
    /// <summary>Exposed, in good takes.</summary>
    Good,

    /// <summary>Exposed, in takes on hold.</summary>
    Hold,

    /// <summary>Exposed, in no-good takes.</summary>
    NoGood,

    /// <summary>Wasted: heads, tails, gaps, run-off, fog, tests, ends.</summary>
    Waste,

    /// <summary>Practice rolls, all of each, and what is left of practice lots.</summary>
    Practice,

    /// <summary>Ends thrown away when stock was canned again or cut.</summary>
    ThrownAway,

    /// <summary>Lost.</summary>
    Lost,

    /// <summary>Damaged beyond use.</summary>
    Damaged,

    /// <summary>Given to others and not back.</summary>
    SentAway,

    /// <summary>On rolls whose log could not be read.</summary>
    Unread,

    /// <summary>Unexposed, on rolls in a camera.</summary>
    InCamera,

    /// <summary>On the shelf, in short ends.</summary>
    ShortEnds,

    /// <summary>On the shelf, in cans not loaded yet: sealed, or canned again.</summary>
    Unopened,
}
