using Spoolbook.Papers.CameraReports;
using Spoolbook.Papers.Logs;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A link to a roll's camera report, or to a take in it.</summary>
/// <param name="What">The roll, or the roll and the take's slate.</param>
/// <param name="Page">The address of the report's page; on paper it leads to its PDF.</param>
public sealed record TakeLink(string What, string Page)
{
    /// <summary>The roll and take that a place in the files is about; null for none.</summary>
    internal static TakeLink? Of(Place place, IReadOnlyList<RollBook> rolls)
    {
        // Several rolls can be in one file: the last one that begins before the place, if the place is not beyond it.
        var roll = rolls
            .Where(r => r.Roll.Place.File == place.File && r.Roll.Place.Line <= place.Line)
            .OrderBy(r => r.Roll.Place.Line)
            .LastOrDefault();
        if (roll is null || place.Line > LastLine(roll.Roll))
        {
            return null;
        }

        var report = CameraReportPaper.NameOf(roll.Roll) + ".html";
        var entry = roll.Roll.Log.LastOrDefault(e => e.Place.Line <= place.Line);
        var layer = roll.Layers.FirstOrDefault(l => ReferenceEquals(l.Take, entry));
        return layer is null || place.Line >= (roll.Roll.Unload?.Place.Line ?? int.MaxValue)
            ? new TakeLink(roll.Roll.Name.Value, report)
            : new TakeLink(roll.Roll.Name.Value + " " + layer.Take.Slate, report + "#" + LogRows.NameOf(layer));
    }

    static int LastLine(Roll roll) =>
        roll
            .Log.Select(e => e.Place.Line)
            .Append(roll.Unload?.Place.Line ?? 0)
            .Append(roll.Load.Place.Line)
            .Append(roll.Name.Place.Line)
            .Max();
}
