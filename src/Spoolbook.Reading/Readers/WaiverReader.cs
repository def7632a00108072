using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>The rules that the crew breaks intentionally.</summary>
static class WaiverReader
{
    public static ImmutableArray<Waiver> ReadAll(MapReader map, MapsKey key) =>
        [.. map.Maps(key).OfType<MapReader>().Select(Read).OfType<Waiver>()];

    static Waiver? Read(MapReader map) =>
        map.Value(WaiverKeys.Check) is not { } check
            ? map.LetGo<Waiver>()
            : new Waiver(map.Head)
            {
                Check = check,
                Take = map.Value(WaiverKeys.Take),
                Shot = map.Value(WaiverKeys.Shot),
                Roll = map.Value(WaiverKeys.Roll),
                Lot = map.Value(WaiverKeys.Lot),
                Piece = map.Value(WaiverKeys.Piece),
                Reason = map.Value(WaiverKeys.Reason),
                By = map.Value(WaiverKeys.By),
            };
}
