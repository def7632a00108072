using Spoolbook.Film;

namespace Spoolbook.Shoot.Walks;

/// <summary>A stretch of film from its first frame up to, and not including, the frame at its end.</summary>
/// <param name="From">The first frame.</param>
/// <param name="To">The first frame after it; never before <paramref name="From"/> in a strip.</param>
public readonly record struct Span(Footage From, Footage To)
{
    /// <summary>Frames in it.</summary>
    public Footage Length => To - From;

    /// <summary>Whether it holds no frame.</summary>
    public bool IsEmpty => To <= From;

    /// <summary>Whether a frame is in it.</summary>
    public bool Contains(Footage frame) => From <= frame && frame < To;

    /// <summary>The frames in both; empty where they do not meet.</summary>
    public Span Intersect(Span other)
    {
        var from = Footage.Max(From, other.From);
        return new Span(from, Footage.Max(from, Footage.Min(To, other.To)));
    }

    /// <summary>The part on a roll of that length; empty where nothing is, or where it ends before it starts.</summary>
    public Span Within(Footage length)
    {
        var from = Footage.Max(Footage.Zero, Footage.Min(From, length));
        return new Span(from, Footage.Max(from, Footage.Min(To, length)));
    }

    /// <summary>Whether a frame is in both.</summary>
    public bool Overlaps(Span other) => !Intersect(other).IsEmpty;
}
