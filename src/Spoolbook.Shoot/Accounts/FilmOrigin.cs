namespace Spoolbook.Shoot.Accounts;

/// <summary>How film came to a shoot.</summary>
public enum FilmOrigin
{
    /// <summary>In the units of the first delivery, to shoot.</summary>
    Bought,

    /// <summary>In the units of the first delivery of practice lots.</summary>
    BoughtForPractice,

    /// <summary>From others, later: what came back is not counted again.</summary>
    Came,

    /// <summary>On rolls whose can nobody knows.</summary>
    FromNoCan,

    /// <summary>In cans that held more, or below zero less, than they said.</summary>
    Remeasured,
}
