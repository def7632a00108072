using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>An effect on the film, with its figures in stops.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">
/// Its frames: of a fade, the fade; of a dissolve, from the start of the first fade to the end of the last; of a
/// superimposition, where the takes overlap.
/// </param>
/// <param name="Layers">Its takes: in a dissolve the outgoing, then the incoming; else in the order shot.</param>
public sealed record Effect(EffectKind Kind, Span Span, ImmutableArray<Layer> Layers)
{
    /// <summary>
    /// Of a dissolve: frames from the start of the fade out to the start of the fade in. Above zero the incoming pass
    /// started late and the picture dips, below zero early and it bumps; zero for other effects.
    /// </summary>
    public Footage Offset { get; init; }

    /// <summary>
    /// Of a dissolve or a superimposition: the exposure of the frame farthest from normal, in stops from normal, as the
    /// takes say under <c>exposed:</c>. Zero for a fade.
    /// </summary>
    public double Worst { get; init; }

    /// <summary>
    /// Of a dissolve: the level of the two shutters alone where it is farthest from a single full opening, in stops:
    /// below zero a dip, above zero a bump. Zero for other effects.
    /// </summary>
    public double Dip { get; init; }

    /// <summary>The average over the frames of what <see cref="Worst"/> is the worst of.</summary>
    public double Mean { get; init; }

    /// <summary>Frames burnt out by two or more full exposures: <see cref="Effects.FullExposure"/> or more.</summary>
    public Footage BurntOut { get; init; }
}
