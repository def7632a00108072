namespace Spoolbook.Checks;

/// <summary>When something is found. What an earlier round found wrong in a roll keeps the later rounds away from it.</summary>
public enum Round
{
    /// <summary>While the files are read.</summary>
    Reading,

    /// <summary>On what was written down.</summary>
    Records,

    /// <summary>On where the film stood: whether the log and the film can both be right.</summary>
    Positions,

    /// <summary>On what lies on the film, and on its account.</summary>
    Strips,

    /// <summary>On the waivers, when it is known what they turned off.</summary>
    Waivers,

    /// <summary>While the papers are printed.</summary>
    Printing,

    /// <summary>In no round of its own: when a check of any round breaks.</summary>
    Breaking,
}
