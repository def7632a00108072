using System.Collections.Immutable;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>A shot of the list, and what was got of it.</summary>
/// <param name="Got">Whether there is a good take.</param>
public sealed record CoverageLine(string Shot, string What, string Takes, string Good, string Where, string Status, bool Got)
{
    internal static ImmutableArray<CoverageLine> Of(CoverageBook coverage, Wording say) =>
    [
        .. coverage.Listed.Select(s => Line(s, s.Planned?.What?.Value ?? "", say)),
        .. coverage.Unlisted.Select(s => Line(s, coverage.Listed.IsEmpty ? "" : say.Words["cover-not-listed"], say)),
    ];

    static CoverageLine Line(CoveredShot shot, string what, Wording say)
    {
        var good = shot.Good.ToList();
        return new CoverageLine(
            shot.Name,
            what,
            Wording.Number(shot.Takes.Length),
            good.Count == 0 ? "–" : string.Join(", ", good.Select(t => t.Layer.Take.Number.Value)),
            good.Count == 0 ? "–" : string.Join("; ", good.Select(t => t.Roll.Roll.Name.Value + " " + say.Length(t.Layer.Span.From))),
            say.Words[shot.IsGot ? "cover-got" : shot.HasHeld ? "cover-held" : shot.Takes.Length > 0 ? "cover-no-good" : "cover-not-shot"],
            shot.IsGot);
    }
}
