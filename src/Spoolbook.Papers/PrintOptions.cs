using System.Collections.Immutable;
using Spoolbook.Papers.Pages;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers;

/// <summary>What a press run needs from outside.</summary>
/// <param name="Made">The date of making that papers carry.</param>
/// <param name="Templates">Where templates, words and the style sheet come from.</param>
public sealed record PrintOptions(DateTimeOffset Made, ITemplateSource Templates)
{
    /// <summary>What the production's own rules set otherwise than the house does.</summary>
    public ImmutableArray<RuleChange> Rules { get; init; } = [];
}
