using System.Collections.Immutable;
using Spoolbook.Papers.Pages;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Papers;

/// <summary>The outside input of a print run.</summary>
/// <param name="Made">The date of making on the papers.</param>
/// <param name="Templates">The source of templates, words and the style sheet.</param>
public sealed record PrintOptions(DateTimeOffset Made, ITemplateSource Templates)
{
    /// <summary>The production's own rules that differ from the house's.</summary>
    public ImmutableArray<RuleChange> Rules { get; init; } = [];

    /// <summary>The papers as they were printed last in this process; null where they are printed once.</summary>
    public PrintedBefore? Before { get; init; }

    /// <summary>Where papers that are made wait for the others; null where all of them wait in memory.</summary>
    public IPaperStaging? Staging { get; init; }

    /// <summary>The names of the papers to print (<see cref="PaperNames"/>); all where it is empty.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>What came back from the lab, by the roll's name.</summary>
    public ImmutableSortedDictionary<string, CanReturn> Returned { get; init; } = ImmutableSortedDictionary<string, CanReturn>.Empty;

    /// <summary>What no check could judge.</summary>
    public ImmutableArray<NotLookedAt> NotLookedAt { get; init; } = [];
}
