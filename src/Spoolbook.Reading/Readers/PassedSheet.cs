using System.Buffers;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Readers;

/// <summary>What a file that was not read looks like, by its name and its first lines.</summary>
/// <param name="IsRecord">Whether it looks like a record at all.</param>
/// <param name="Roll">The name of the roll in it; null where it does not show.</param>
sealed record PassedSheet(string Name, bool IsRecord, FileKind Kind, string? Roll)
{
    static readonly SearchValues<char> KeyLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz-");

    static readonly (FileKind Kind, string[] Keys)[] Telling =
    [
        (FileKind.Roll, [RollKeys.Roll.Name]),
        (FileKind.Production, [ProductionKeys.Title.Name, ProductionKeys.Code.Name]),
        (FileKind.Stock, [FileKeys.Lots.Name]),
        (FileKind.Kit, [FileKeys.Bodies.Name, FileKeys.Lenses.Name, FileKeys.Filters.Name, FileKeys.Loan.Name]),
    ];

    /// <summary>Whether its name is as right as that of the file read: <c>production.yml</c> beside <c>production.yaml</c>.</summary>
    public bool IsRival =>
        !Name.Contains('/') && KindNamed(Path.GetFileNameWithoutExtension(Name)) is not null && SheetNames.EndsAsSheet(Name);

    public static PassedSheet Of(PassedFile file)
    {
        var keys = KeysAtMargin(file.Top);
        var told = Telling.Where(t => t.Keys.Any(keys.ContainsKey)).Select(t => (FileKind?)t.Kind).FirstOrDefault();
        var named = file.Name.Contains('/') ? null : KindNamed(SheetNames.StemOf(file.Name));
        var kind = named ?? told ?? FileKind.Roll;
        var roll = kind == FileKind.Roll && keys.TryGetValue(RollKeys.Roll.Name, out var name) && name.Length > 0 ? name : null;
        return new PassedSheet(file.Name, LooksLikeRecord(file, keys, named is not null), kind, roll);
    }

    // Another program's YAML can be in the production's folder, and notes and pictures among the rolls.
    static bool LooksLikeRecord(PassedFile file, Dictionary<string, string> keys, bool isNamed)
    {
        var ends = SheetNames.HoldsSheetEnding(file.Name);

        // A guide can show the first lines of a sheet.
        var holds = keys.ContainsKey(FileKeys.Version.Name) && !file.Name.EndsWith(".md", StringComparison.OrdinalIgnoreCase);
        return file.Name.StartsWith(SheetNames.Rolls + "/", StringComparison.Ordinal) ? holds || ends
            : file.Name.Contains('/') ? holds && ends
            : holds || (ends && (isNamed || string.IsNullOrWhiteSpace(file.Top)));
    }

    static FileKind? KindNamed(string stem) =>
        SheetNames.Kinds.Contains(stem.ToLowerInvariant()) ? Enum.Parse<FileKind>(stem, ignoreCase: true) : null;

    /// <summary>Keys at the start of a line, with their values; none where the first line that is not blank has no key.</summary>
    static Dictionary<string, string> KeysAtMargin(string top)
    {
        var keys = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in top.Split('\n'))
        {
            if (line.Length == 0 || char.IsWhiteSpace(line[0]) || line[0] == '#' || line.StartsWith("---", StringComparison.Ordinal))
            {
                continue;
            }

            var colon = line.IndexOf(':');
            if (colon > 0 && line.AsSpan(0, colon).IndexOfAnyExcept(KeyLetters) < 0)
            {
                keys.TryAdd(line[..colon], line[(colon + 1)..].Split(" #")[0].Trim().Trim('"', '\''));
            }
            else if (keys.Count == 0)
            {
                break;
            }
        }

        return keys;
    }
}
