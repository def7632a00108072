using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>
/// A part of a YAML file: what it says, for reading, and the characters that it is written with, for changing it
/// where it stands.
/// </summary>
/// <param name="place">Where a message points, on one line.</param>
/// <param name="start">Where its own text begins, after any anchor and tag.</param>
/// <param name="end">The first character after it; line ends, blanks and comments after it are no part of it.</param>
abstract class Node(Place place, int start, int end)
{
    public Place Place { get; } = place;

    public int Start { get; } = start;

    public int End { get; } = end;

    /// <summary>The node itself, or the one that an alias repeats.</summary>
    public virtual Node Meant => this;

    /// <summary>Parts in it, itself among them, with everything counted again wherever an alias repeats it.</summary>
    public abstract long Weight { get; }

    /// <summary>How many lists and maps lie in one another in it; 0 for a value.</summary>
    public abstract int Height { get; }

    /// <summary>What it is, in the words of a message.</summary>
    public abstract Sentence What { get; }
}
