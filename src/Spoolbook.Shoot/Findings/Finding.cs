using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Findings;

/// <summary>Something wrong, or worth knowing, in a production.</summary>
/// <param name="Check">The check's name, <c>group/what</c>.</param>
/// <param name="Level">How serious it is.</param>
/// <param name="Description">What is wrong, in one sentence that a second-year student understands.</param>
/// <param name="Place">The characters it is about, as narrow as possible.</param>
public sealed record Finding(string Check, Level Level, Sentence Description, Place Place)
{
    /// <summary>What is wrong, in English.</summary>
    public string Message => Description.ToString();

    /// <summary>Related places with a few words each: "first used here".</summary>
    public ImmutableArray<Related> Others { get; init; } = [];

    /// <summary>The figures behind it, in the order they are worked out.</summary>
    public ImmutableArray<Figure> Figures { get; init; } = [];

    /// <summary>What to do, with the line to write where there is one.</summary>
    public Sentence Advice { get; init; } = Sentence.Plain("");

    /// <summary>What to do, in English.</summary>
    public string Help => Advice.ToString();

    /// <summary>The roll that it is about, if any.</summary>
    public string? Roll { get; init; }

    /// <summary>Whether the roll is checked all the same: nothing but a box of its paper sheet is unread.</summary>
    public bool SparesRoll { get; init; }

    /// <summary>The take that it is about, by its slate, if any.</summary>
    public string? Take { get; init; }

    /// <summary>The shot that it is about where it is about no single take, scene and letter together: <c>2C</c>.</summary>
    public string? Shot { get; init; }

    /// <summary>The lot of raw stock that it is about, where it is about no single roll.</summary>
    public string? Lot { get; init; }

    /// <summary>The piece of the kit that it is about, by its name there, if any.</summary>
    public string? Piece { get; init; }
}
