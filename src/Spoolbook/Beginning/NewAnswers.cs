using System.Collections.Immutable;
using Spoolbook.Entry;

namespace Spoolbook.Beginning;

/// <summary>What a production is begun with. What is null or empty is not known yet.</summary>
internal sealed record NewAnswers
{
    public required string Title { get; init; }

    public required string Code { get; init; }

    public string? Gauge { get; init; }

    public string? ProjectAt { get; init; }

    public string? Paper { get; init; }

    public string? FirstDay { get; init; }

    public ImmutableArray<LotAnswer> Lots { get; init; } = [];

    public ImmutableArray<BodyAnswer> Bodies { get; init; } = [];

    public ImmutableArray<LensAnswer> Lenses { get; init; } = [];

    public ImmutableArray<PersonAnswer> People { get; init; } = [];

    /// <summary>The lab's name, and the lines of its address.</summary>
    public ImmutableArray<string> Lab { get; init; } = [];

    public ImmutableArray<ListedShot> Shots { get; init; } = [];

    /// <summary>The production that kit, people, lab and rates are taken over from.</summary>
    public EarlierProduction? From { get; init; }
}
