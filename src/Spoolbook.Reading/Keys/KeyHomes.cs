namespace Spoolbook.Reading.Keys;

/// <summary>Where a key belongs that stands in the wrong place.</summary>
static class KeyHomes
{
    /// <summary>The kinds of map that have the key, as messages call them; null where none has.</summary>
    public static string? Find(string key)
    {
        var homes = new List<string>();
        foreach (var table in KeyTables.All)
        {
            if (table.Find(key) is not null)
            {
                homes.Add(table.Owner);
            }
        }

        return homes.Count == 0 ? null : string.Join(" or ", homes);
    }
}
