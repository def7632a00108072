using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>A part of a YAML file: what it says, for reading, and its own characters, for changing it in place.</summary>
/// <param name="place">Where a message points, on one line.</param>
/// <param name="start">Where its own text begins, after any anchor and tag.</param>
/// <param name="end">The first character after its text. Line ends, blanks and comments behind it do not count.</param>
abstract class Node(Place place, int start, int end)
{
    public Place Place { get; } = place;

    public int Start { get; } = start;

    public int End { get; } = end;

    /// <summary>The node itself, or the one that an alias repeats.</summary>
    public virtual Node Meant => this;

    /// <summary>Parts in it, itself included; what an alias repeats counts again each time.</summary>
    public abstract long Weight { get; }

    /// <summary>How deep its lists and maps are nested; 0 for a value.</summary>
    public abstract int Height { get; }

    /// <summary>Its name in a message.</summary>
    public abstract Sentence What { get; }
}
