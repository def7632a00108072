namespace Spoolbook.Checks;

/// <summary>When something is found. A roll with an error in one round is skipped in the later ones.</summary>
public enum Round
{
    /// <summary>While a line of the short form is read, before anything is written.</summary>
    Saying,

    /// <summary>While the files are read.</summary>
    Reading,

    /// <summary>On what was written down.</summary>
    Records,

    /// <summary>On where the film was: whether the log and the film can both be right.</summary>
    Positions,

    /// <summary>On what is on the film, and on its tally.</summary>
    Strips,

    /// <summary>On the waivers, once it is known what they turned off.</summary>
    Waivers,

    /// <summary>While the papers are printed.</summary>
    Printing,

    /// <summary>On all productions of a school together.</summary>
    Department,

    /// <summary>Before a consignment goes, on all productions of a school together.</summary>
    Shipping,

    /// <summary>In no round: when a check of any round breaks.</summary>
    Breaking,
}
