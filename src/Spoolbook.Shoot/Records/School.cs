using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>The school or department of the production, as shown on its papers.</summary>
public sealed record School(Place Place)
{
    /// <summary>Its name; null to show only the logo.</summary>
    public Located<string>? Name { get; init; }

    /// <summary>Its logo; null where there is none, or none that can be used.</summary>
    public Logo? Logo { get; init; }

    /// <summary>Its colours, at most two: for its name and the rule below it, and for links and the end of the rule.</summary>
    public ImmutableArray<Located<InkColour>> Colours { get; init; } = [];
}
