using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Schools;

/// <summary>The productions that a command line means, where it can mean several.</summary>
/// <param name="Names">Their folders, as paths from the folder that the command runs in, in order.</param>
/// <param name="School">The school's folder that was named, as typed; null for any other.</param>
/// <param name="IsSeveral">Whether the command sums up several, though the folder of a school may hold one.</param>
internal sealed record ChosenProductions(ImmutableArray<string> Names, bool IsSeveral, string? School = null)
{
    /// <summary>The folders that were named for the productions in them.</summary>
    public ImmutableArray<string> Folders { get; private init; } = [];

    /// <summary>Finishes or undoes what was cut short in those folders: a school's papers, a consignment.</summary>
    public void Settle(string command, CommandEnvironment around)
    {
        foreach (var folder in Folders)
        {
            WorkFolder.SettleProduction(folder, command, around);
        }
    }

    /// <summary>The productions of some words; of none, the production that the user is in.</summary>
    public static ChosenProductions Of(IReadOnlyList<string> words, CommandEnvironment around)
    {
        if (words.Count == 0)
        {
            return ProductionPlace.Here(around) is { } here
                ? new ChosenProductions([here], IsSeveral: false)
                : new ChosenProductions(Below(".", around), IsSeveral: true, ".") { Folders = ["."] };
        }

        if (words is [var only])
        {
            var isSchool = SchoolPlace.IsSchool(Path.GetFullPath(only, around.Folder));
            return Below(only, around) is var some && (isSchool || some.Length > 0)
                ? new ChosenProductions(some, IsSeveral: true, isSchool ? only : null) { Folders = [only] }
                : new ChosenProductions([ProductionPlace.Of(only, around)!], IsSeveral: false);
        }

        var all = words.SelectMany(word =>
            Below(word, around) is { Length: > 0 } some ? some : [Slashed(ProductionPlace.Of(word, around)!)]
        );
        return new ChosenProductions([.. all.DistinctBy(name => Path.GetFullPath(name, around.Folder))], IsSeveral: true)
        {
            Folders = [.. words.Where(word => Below(word, around).Length > 0)],
        };
    }

    // Empty where the word means one production, or none.
    static ImmutableArray<string> Below(string word, CommandEnvironment around)
    {
        var folder = Path.GetFullPath(word, around.Folder);
        if (!Directory.Exists(folder) || FolderFiles.HoldsProduction(folder))
        {
            return [];
        }

        var isRooted = Path.IsPathRooted(word);
        return [.. ProductionFolders.Below(folder).Select(path => Slashed(isRooted ? path : Path.GetRelativePath(around.Folder, path)))];
    }

    static string Slashed(string path) => path.Replace(Path.DirectorySeparatorChar, '/');
}
