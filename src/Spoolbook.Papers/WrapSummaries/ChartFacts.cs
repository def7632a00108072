using System.Collections.Immutable;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A chart for paper, and the same for a phone.</summary>
public sealed record ChartFacts(string Caption, Markup Picture, Markup PhonePicture)
{
    /// <summary>One, or none where there is nothing to draw.</summary>
    internal static ImmutableArray<ChartFacts> Of(string caption, Func<PictureWidth, string?> draw) =>
        draw(PictureWidth.Page) is { } wide && draw(PictureWidth.Narrow) is { } narrow
            ? [new(caption, new Markup(wide), new Markup(narrow))]
            : [];
}
