namespace Spoolbook.Papers.Pages;

/// <summary>The part of SVG allowed in a figure: what every renderer can draw as vectors, with presentation in attributes.</summary>
static class PictureVocabulary
{
    static readonly string[] Paint =
    [
        "fill",
        "stroke",
        "stroke-width",
        "stroke-dasharray",
        "fill-rule",
        "transform",
        "class",
        "id",
        "clip-path",
    ];

    public static readonly IReadOnlyDictionary<string, IReadOnlySet<string>> Elements = new Dictionary<string, IReadOnlySet<string>>(
        StringComparer.Ordinal
    )
    {
        ["svg"] = Set("viewBox", "role", "aria-label", "aria-labelledby", "width", "height", "class", "preserveAspectRatio"),
        ["title"] = Set("id"),
        ["desc"] = Set("id"),
        ["defs"] = Set(),
        ["clipPath"] = Set("id"),
        ["g"] = Set(Paint),
        ["rect"] = Set([.. Paint, "x", "y", "width", "height", "rx", "ry"]),
        ["line"] = Set([.. Paint, "x1", "y1", "x2", "y2"]),
        ["polyline"] = Set([.. Paint, "points"]),
        ["polygon"] = Set([.. Paint, "points"]),
        ["path"] = Set([.. Paint, "d"]),
        ["circle"] = Set([.. Paint, "cx", "cy", "r"]),
        ["image"] = Set("x", "y", "width", "height", "href", "transform", "clip-path"),
        ["text"] = Set([.. Paint, "x", "y", "font-size", "font-weight", "text-anchor"]),
    };

    static HashSet<string> Set(params string[] names) => new(names, StringComparer.Ordinal);
}
