using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A shot of the list, and what was got of it.</summary>
/// <param name="Got">Whether there is a good take.</param>
public sealed record CoverageLine(string Shot, string What, string Takes, string Good, string Where, string Status, bool Got)
{
    internal static ImmutableArray<CoverageLine> Of(ShootBook book, PaperFormat format)
    {
        var byShot = (from roll in book.Counted
                      from layer in roll.Layers
                      group (Roll: roll, Layer: layer) by layer.Take.ShotName).ToDictionary(g => g.Key, g => g.ToList());
        var listed = book.Production.Shots.Select(s => Line(s.Name, s.What?.Value ?? "", byShot.GetValueOrDefault(s.Name) ?? [], format));
        var names = book.Production.Shots.Select(s => s.Name).ToHashSet();
        var extra = byShot.Where(g => !names.Contains(g.Key)).Select(g => Line(g.Key, names.Count == 0 ? "" : format.Words["cover-not-listed"], g.Value, format));
        return [.. listed, .. extra];
    }

    static CoverageLine Line(string shot, string what, List<(RollBook Roll, Layer Layer)> takes, PaperFormat format)
    {
        var good = takes.Where(t => t.Layer.Take.Mark.Value == Mark.Good).ToList();
        var held = takes.Any(t => t.Layer.Take.Mark.Value == Mark.Hold);
        return new CoverageLine(
            shot,
            what,
            PaperFormat.Number(takes.Count),
            good.Count == 0 ? "–" : string.Join(", ", good.Select(t => t.Layer.Take.Number.Value)),
            good.Count == 0 ? "–" : string.Join("; ", good.Select(t => t.Roll.Roll.Name.Value + " " + format.Length(t.Layer.Span.From))),
            format.Words[good.Count > 0 ? "cover-got" : held ? "cover-held" : takes.Count > 0 ? "cover-no-good" : "cover-not-shot"],
            good.Count > 0);
    }
}
