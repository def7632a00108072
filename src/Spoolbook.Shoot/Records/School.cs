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

/// <summary>A logo's file.</summary>
/// <param name="File">Its path from the production's folder: a PNG or an SVG.</param>
/// <param name="Bytes">What the file holds.</param>
public sealed record Logo(Located<string> File, ImmutableArray<byte> Bytes)
{
    /// <summary>Whether it is drawn in lines and not in pixels.</summary>
    public bool IsSvg => File.Value.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
}
