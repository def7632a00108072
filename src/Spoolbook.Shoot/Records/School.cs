using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>The school or department that the production belongs to, as its papers show it.</summary>
public sealed record School(Place Place)
{
    /// <summary>Its name; null where only the logo is to be seen.</summary>
    public Located<string>? Name { get; init; }

    /// <summary>Its logo; null where there is none, or none that can be used.</summary>
    public Logo? Logo { get; init; }

    /// <summary>Its colours, two at most: that of its name and of the rule below it, and that of links and of the rule's end.</summary>
    public ImmutableArray<Located<InkColour>> Colours { get; init; } = [];
}
