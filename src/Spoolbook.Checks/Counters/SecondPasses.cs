using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Counters;

/// <summary>The passes after the first: what was rewound, and what was shot over it.</summary>
static class SecondPasses
{
    /// <summary>A rewind and the first take after it.</summary>
    /// <param name="IsDissolve">Whether the take fades in where an earlier one faded out.</param>
    /// <param name="ZeroMoved">How far a position on the strip is beyond the one on the sheet.</param>
    public sealed record Start(Rewind Rewind, Layer First, bool IsDissolve, Footage ZeroMoved);

    /// <summary>The start of every later pass with a take in it, in order.</summary>
    public static IEnumerable<Start> Find(RollBook book)
    {
        foreach (var move in book.Strip.Moves)
        {
            if (move.Entry is Rewind rewind && book.Layers.FirstOrDefault(l => l.Pass == move.Pass + 1) is { } first)
            {
                yield return new Start(rewind, first, FadedOutUnder(book, first) is not null, move.ZeroMoved);
            }
        }
    }

    /// <summary>The take of an earlier pass whose fade out is under the fade in of this one, or null.</summary>
    public static Layer? FadedOutUnder(RollBook book, Layer fadingIn)
    {
        if (fadingIn.FadeIn == Footage.Zero)
        {
            return null;
        }

        var fadeIn = new Span(fadingIn.Span.From, fadingIn.Span.From + fadingIn.FadeIn);
        return book.Layers.LastOrDefault(l => l.Pass < fadingIn.Pass && l.FadeOut > Footage.Zero && FadeOutOf(l).Overlaps(fadeIn));
    }

    /// <summary>The frames of a take's fade out.</summary>
    public static Span FadeOutOf(Layer layer) => new(layer.Span.To - layer.FadeOut, layer.Span.To);
}
