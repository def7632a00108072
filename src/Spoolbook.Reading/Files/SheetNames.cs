using System.Collections.Immutable;

namespace Spoolbook.Reading.Files;

/// <summary>The names of a production's files.</summary>
public static class SheetNames
{
    public const string Rolls = "rolls";

    /// <summary>The folder of the papers, unless the command line names another.</summary>
    public const string Papers = "papers";

    /// <summary>The ledger among the papers, with the rolls they were made from.</summary>
    public const string Ledger = Papers + "/ledger.json";

    /// <summary>The files that a production has once.</summary>
    public static ImmutableArray<string> Kinds { get; } = ["production", "stock", "kit"];

    // A card from another machine can come back with its names in capitals.
    /// <summary>Whether a name has a sheet's ending: `.yaml` or `.yml`.</summary>
    public static bool EndsAsSheet(string name) => Path.GetExtension(name).ToLowerInvariant() is ".yaml" or ".yml";

    /// <summary>Whether a sheet's ending is anywhere in a name: `r05.yaml.txt`, `r05.yaml~`.</summary>
    public static bool HoldsSheetEnding(string name)
    {
        foreach (var ending in (string[])[".yaml", ".yml"])
        {
            var at = name.IndexOf(ending, StringComparison.OrdinalIgnoreCase);
            if (at >= 0 && (at + ending.Length == name.Length || !char.IsAsciiLetterOrDigit(name[at + ending.Length])))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A file's name up to its first dot: `r05` of `rolls/r05.yaml.txt`.</summary>
    public static string StemOf(string name) => Path.GetFileName(name).Split('.')[0];
}
