using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>Where a misplaced key belongs.</summary>
static class KeyHomes
{
    public static bool Knows(string key) => KeyTables.All.Any(table => table.Find(key) is not null);

    /// <summary>The kinds of map that have the key, as messages call them.</summary>
    public static List<Sentence> Find(string key)
    {
        var homes = new List<Sentence>();
        foreach (var table in KeyTables.All)
        {
            if (table.Find(key) is not null)
            {
                homes.Add(table.Owner);
            }
        }

        return homes;
    }
}
