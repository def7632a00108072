using System.Collections.Immutable;

namespace Spoolbook.Entry;

/// <summary>
/// One thing that is said of a take, and what each place calls it. Every place names them in the order of <see cref="All"/>; only
/// the mark, which is said when the take is over, is beside the slate on paper, where the eye looks for the good ones.
/// </summary>
/// <param name="Key">In the roll file and in a line of the short form.</param>
/// <param name="Column">Over its column on the log sheet and the camera report; null where they have none.</param>
/// <param name="Head">Over its column in the workbook's Takes and in a table; null where they have none.</param>
/// <param name="Button">On the pocket log; null where it has no word for it.</param>
public sealed record TakePart(string Key, string? Column, string? Head, string? Button)
{
    /// <summary>All of them, in their order.</summary>
    public static ImmutableArray<TakePart> All { get; } =
    [
        new("scene", "Slate", "Scene", "Scene"),
        new("shot", "Slate", "Shot", "Shot"),
        new("take", "Slate", "Take", "Take"),
        new("from", "From", "From", null),
        new("to", "To", "To", "To"),
        new("frames", "Length", "Length", null),
        // The column has room for its unit alone.
        new("speed", "fps", "Speed", "Speed"),
        new("lens", "Lens", "Lens", "Lens"),
        new("stop", "Stop", "Stop", "Stop"),
        new("reading", "Meter", null, "Meter"),
        new("filter", "Filter", "Filter", "Filter"),
        new("shutter", null, null, "Shutter"),
        new("focus", "Focus", null, "Focus"),
        new("mark", "Mark", "Mark", null),
        new("at", "Time", null, "Time"),
        new("note", "Remarks", "Remarks", "Remarks"),
    ];
}
