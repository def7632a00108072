using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>An effect as it lies on the film, with its figures in stops.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">The frames that it takes: the fade; in a dissolve, from the start of the first of its fades to the end of the last;
/// where the takes lie over one another.</param>
/// <param name="Layers">The takes that make it: in a dissolve the outgoing, then the incoming; else in the order in which they were
/// shot.</param>
public sealed record Effect(EffectKind Kind, Span Span, ImmutableArray<Layer> Layers)
{
    /// <summary>
    /// Of a dissolve: frames by which the fade in starts after the fade out. Above zero the incoming pass
    /// started late and the picture dips, below zero early and it bumps; zero for other effects.
    /// </summary>
    public Footage Offset { get; init; }

    /// <summary>
    /// Of a dissolve: the level of the two shutters together where it is farthest from a single full opening,
    /// in stops: below zero a dip, above zero a bump. Of a superimposition: the exposure of the frame farthest
    /// from normal, in stops from normal. Zero for a fade.
    /// </summary>
    public double Worst { get; init; }

    /// <summary>The frames' mean of what <see cref="Worst"/> tells the worst of.</summary>
    public double Mean { get; init; }

    /// <summary>
    /// Frames that two or more full exposures have burnt out: full is any exposure not more than
    /// <see cref="Effects.FullExposure"/> under normal.
    /// </summary>
    public Footage BurntOut { get; init; }
}
