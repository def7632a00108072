namespace Spoolbook.Film;

/// <summary>What is written before the number of a stop.</summary>
public enum StopMark
{
    /// <summary>Nothing: the bare number.</summary>
    None,

    /// <summary><c>f/</c>: focal length over the diameter of the opening.</summary>
    F,

    /// <summary><c>T</c>: the f-number of a lens without losses that would pass the same light.</summary>
    T,
}
