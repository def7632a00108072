using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>The production's own levels and tolerances. Only the checks know which names there are.</summary>
static class HouseRulesReader
{
    public static HouseRules Read(MapReader map) =>
        new(map.Head)
        {
            Levels = [.. map.Named(HouseRulesKeys.Levels).Select(n => new LevelRule(n.Name, n.Value))],
            Tolerances = [.. map.Named(HouseRulesKeys.Tolerances).Select(n => new ToleranceRule(n.Name, n.Value))],
        };
}
