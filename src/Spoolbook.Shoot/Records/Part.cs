namespace Spoolbook.Shoot.Records;

/// <summary>The parts of a production that can be unread.</summary>
public enum Part
{
    /// <summary>The crew.</summary>
    People,

    /// <summary>The shooting days.</summary>
    Days,

    /// <summary>The shot list.</summary>
    Shots,

    /// <summary>Lab and rates.</summary>
    Lab,

    /// <summary>Raw stock.</summary>
    Lots,

    /// <summary>Bodies, lenses and everything else that must go back.</summary>
    Kit,

    /// <summary>The rolls.</summary>
    Rolls,
}
