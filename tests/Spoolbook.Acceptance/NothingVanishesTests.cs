using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Acceptance;

/// <summary>
/// Each file of a production with papers is deleted, emptied, cut in half and renamed in turn, and the check must name it:
/// as an error where all that is in it is gone.
/// </summary>
public sealed class NothingVanishesTests : IDisposable
{
    static readonly string[] Productions = [Repository.Sample, Path.Combine(TestFolders.Clean, "sync-documentary")];

    readonly Bench _bench = new();
    readonly MadeOnce _made = new();

    public static TheoryData<string, string> Files
    {
        get
        {
            var files = new TheoryData<string, string>();
            foreach (var production in Productions)
            {
                foreach (
                    var file in Directory.EnumerateFiles(production, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
                )
                {
                    files.Add(Path.GetFileName(production), Path.GetRelativePath(production, file).Replace('\\', '/'));
                }
            }

            return files;
        }
    }

    public void Dispose()
    {
        _bench.Dispose();
        _made.Dispose();
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_file_cannot_vanish_without_an_error(string production, string file)
    {
        var folder = Made(production);
        var path = Path.Combine(folder, file);
        var text = File.ReadAllText(path);
        var before = Found(folder);
        var about = About(file, text);
        var silent = new List<string>();

        Try("deleted", Level.Error, () => File.Delete(path), about);
        Try("emptied", Level.Error, () => File.WriteAllText(path, ""), about);
        // Cut off within a note, the log of a roll that nobody counts still reads as one that goes on.
        if (!text.Contains("practice: yes", StringComparison.Ordinal))
        {
            Try("cut in half", Level.Warning, () => File.WriteAllText(path, text[..(text.Length / 2)]), about);
        }

        var away = "put away/" + Path.GetFileName(file);
        string[] others = [file + ".txt", file + ".bak", file + "~", Path.ChangeExtension(file, ".txt"), away];
        foreach (var other in others)
        {
            Try("renamed to " + other, Level.Error, () => Move(path, Path.Combine(folder, other)), [other, .. about]);
            File.Delete(Path.Combine(folder, other));
        }

        Assert.Empty(silent);

        void Try(string what, Level least, Action harm, string[] names)
        {
            harm();
            var said = Found(folder).Except(before);
            if (!said.Any(f => f.Level >= least && names.Any(n => f.Said.Contains(n, StringComparison.Ordinal))))
            {
                silent.Add($"{file} {what}:\n{string.Join('\n', said)}");
            }

            File.WriteAllText(path, text);
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_roll_under_another_name_among_the_rolls_is_still_a_roll(string production, string file)
    {
        if (!file.StartsWith("rolls/", StringComparison.Ordinal))
        {
            return;
        }

        var folder = Made(production);
        var before = Found(folder).Select(f => f.Check).Order();
        Move(Path.Combine(folder, file), Path.Combine(folder, "rolls", "what Dov wrote.YAML"));

        Assert.Equal(before, Found(folder).Select(f => f.Check).Order());
    }

    /// <summary>A copy with the ledger of its papers.</summary>
    string Made(string name)
    {
        var production = Productions.Single(p => Path.GetFileName(p) == name);
        var folder = _bench.CopyOf(production);
        Directory.CreateDirectory(Path.Combine(folder, "papers"));
        File.Copy(Path.Combine(_made.PapersOf(production), "ledger.json"), Path.Combine(folder, "papers", "ledger.json"));
        return folder;
    }

    /// <summary>By what a finding may call the file: its name, or the roll in it.</summary>
    static string[] About(string file, string text) =>
        [file, .. text.Split('\n').Where(l => l.StartsWith("roll: ", StringComparison.Ordinal)).Select(l => l["roll: ".Length..].Trim())];

    static IEnumerable<(Level Level, string Check, string Said)> Found(string folder) =>
        Pipeline
            .Run(new FolderFiles(folder))
            .Found.Findings.Select(f => (f.Level, f.Check, $"{f.Place.File} {f.Roll} {f.Message} {f.Help}"));

    static void Move(string from, string to)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        File.Move(from, to);
    }
}
