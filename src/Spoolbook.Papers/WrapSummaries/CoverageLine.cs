using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A shot of the list, and its takes.</summary>
/// <param name="Good">Its good takes, each with its roll and footage; empty for none.</param>
/// <param name="Status">What is the matter with a shot that is not got; empty for one that is.</param>
public sealed record CoverageLine(string Shot, string What, string Takes, string Good, string Status)
{
    // Fewer lines than this are no table too long for one column.
    const int FewestForColumns = 16;

    internal static ImmutableArray<CoverageLine> Of(CoverageBook coverage, PaperFormat format) =>
        [
            .. coverage.Listed.Select(s => Line(s, s.Planned?.What?.Value ?? "", format)),
            .. coverage.Unlisted.Select(s => Line(s, coverage.Listed.IsEmpty ? "" : format.Words["cover-not-listed"], format)),
        ];

    /// <summary>The lines side by side, read across, so that a screen reader and a phone have them in their order.</summary>
    internal static ImmutableArray<ImmutableArray<CoverageLine>> InColumns(ImmutableArray<CoverageLine> lines, bool described)
    {
        var columns =
            lines.Length < FewestForColumns ? 1
            : described ? 2
            : 3;
        return [.. lines.Chunk(columns).Select(row => row.ToImmutableArray())];
    }

    static CoverageLine Line(CoveredShot shot, string what, PaperFormat format) =>
        new(
            shot.Name,
            what,
            PaperFormat.Number(shot.Takes.Length),
            string.Join(
                "; ",
                shot.Good.Select(t =>
                    format.Words.Fill(
                        "cover-good-at",
                        ("take", PaperFormat.Number(t.Layer.Take.Number.Value)),
                        ("roll", t.Roll.Roll.Name.Value),
                        ("at", format.Length(t.Layer.Span.From))
                    )
                )
            ),
            shot.IsGot
                ? ""
                : format.Words[
                    shot.IsDropped ? "cover-dropped"
                    : shot.HasHeld ? "cover-held"
                    : shot.Takes.Length > 0 ? "cover-no-good"
                    : "cover-not-shot"
                ]
        );
}
