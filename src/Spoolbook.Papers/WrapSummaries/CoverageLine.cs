using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A shot of the list, and its takes.</summary>
/// <param name="Got">Whether there is a good take.</param>
public sealed record CoverageLine(string Shot, string What, string Takes, string Good, string Where, string Status, bool Got)
{
    internal static ImmutableArray<CoverageLine> Of(CoverageBook coverage, PaperFormat format) =>
        [
            .. coverage.Listed.Select(s => Line(s, s.Planned?.What?.Value ?? "", format)),
            .. coverage.Unlisted.Select(s => Line(s, coverage.Listed.IsEmpty ? "" : format.Words["cover-not-listed"], format)),
        ];

    static CoverageLine Line(CoveredShot shot, string what, PaperFormat format)
    {
        var good = shot.Good.ToList();
        return new CoverageLine(
            shot.Name,
            what,
            PaperFormat.Number(shot.Takes.Length),
            good.Count == 0 ? "–" : string.Join(", ", good.Select(t => t.Layer.Take.Number.Value)),
            good.Count == 0 ? "–" : string.Join("; ", good.Select(t => t.Roll.Roll.Name.Value + " " + format.Length(t.Layer.Span.From))),
            format.Words[
                shot.IsGot ? "cover-got"
                : shot.HasHeld ? "cover-held"
                : shot.Takes.Length > 0 ? "cover-no-good"
                : "cover-not-shot"
            ],
            shot.IsGot
        );
    }
}
