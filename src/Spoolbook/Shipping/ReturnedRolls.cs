using System.Collections.Immutable;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Shipping;

/// <summary>What came back from the lab of one production's rolls, by the consignments of the school's folder.</summary>
internal static class ReturnedRolls
{
    /// <summary>The last word on each roll, by its name, from the nearest folder above with consignments; none without one.</summary>
    /// <param name="production">The production's folder, in full.</param>
    public static ImmutableSortedDictionary<string, CanReturn> Of(string production)
    {
        var whole = Path.TrimEndingDirectorySeparator(Path.GetFullPath(production));
        for (var school = Path.GetDirectoryName(whole); school is not null; school = Path.GetDirectoryName(school))
        {
            if (Directory.Exists(Path.Combine(school, ShipmentRecords.UsualFolder)))
            {
                return Of(
                    ShipmentRecords.Read(school, ShipmentRecords.UsualFolder).Records,
                    Path.GetRelativePath(school, whole).Replace('\\', '/')
                );
            }
        }

        return Of([], "");
    }

    static ImmutableSortedDictionary<string, CanReturn> Of(ImmutableArray<ShipmentRecord> records, string folder)
    {
        var last = ImmutableSortedDictionary.CreateBuilder<string, CanReturn>(StringComparer.Ordinal);
        foreach (var record in records.OrderBy(r => r.SentOn))
        {
            foreach (var can in record.Cans.Where(c => c.Production == folder))
            {
                if (record.ReturnOf(can) is { } back)
                {
                    last[can.Roll] = back;
                }
            }
        }

        return last.ToImmutable();
    }
}
