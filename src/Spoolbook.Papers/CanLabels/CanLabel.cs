using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.CanLabels;

/// <summary>One can's label.</summary>
/// <param name="Roll">The largest text on it.</param>
/// <param name="ShortName">Whether the roll's name is short enough for the largest type.</param>
/// <param name="LongName">Whether it is too long even for large type.</param>
/// <param name="ShortEnd">Whether the can has a short end in it, and nothing exposed.</param>
/// <param name="Held">Whether the can is held back from the lab.</param>
/// <param name="Code">Production, roll and check character, as the QR code has it.</param>
public sealed record CanLabel(string Roll, bool ShortName, bool LongName, bool ShortEnd, bool Held, string Code, Markup Qr)
{
    // Five letters fit beside the code in the largest type, some ten in the next.
    const int ShortNameLength = 4,
        LongNameLength = 9;

    /// <summary>This label with another largest text, in type that it fits in.</summary>
    internal CanLabel Named(string name) =>
        this with
        {
            Roll = name,
            ShortName = new StringInfo(name).LengthInTextElements <= ShortNameLength,
            LongName = new StringInfo(name).LengthInTextElements > LongNameLength,
        };

    /// <summary>Whether the film in it is for practice, and never goes to a lab.</summary>
    public bool IsPractice { get; init; }

    /// <summary>The production's title.</summary>
    public required string Production { get; init; }

    public required string Gauge { get; init; }

    public string Process { get; init; } = "";

    /// <summary>Whether a negative's bath would ruin it, so that the process stands out.</summary>
    public bool IsReversal { get; init; }

    public string Push { get; init; } = "";

    /// <summary>Which can of how many goes to the lab; empty for one that does not.</summary>
    public string CanOf { get; init; } = "";

    /// <summary>The lab; empty where none is chosen, or the can does not go there.</summary>
    public string Lab { get; init; } = "";

    /// <summary>What costs film if nobody reads it: X-rays, fog, effects, a head that is outside.</summary>
    public ImmutableArray<string> Warnings { get; init; } = [];

    /// <summary>Which end of the film is outside; empty where a warning says so, or it is raw stock.</summary>
    public string Outside { get; init; } = "";

    /// <summary>How much was loaded, where the rest was cut off; empty where nothing was.</summary>
    public string CutFrom { get; init; } = "";

    public required StockFacts Stock { get; init; }

    public required string Rated { get; init; }

    /// <summary>How much film is in the can.</summary>
    public required string Film { get; init; }

    public required string Body { get; init; }

    public required string Date { get; init; }

    /// <summary>The return address, on one line.</summary>
    public required string ReturnTo { get; init; }
}
