using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance.House;

/// <summary>
/// Which folder of a room uses which, read from its files: by a using, by a full name, or, for the folders around a
/// folder, which need no using, by the names of their types.
/// </summary>
sealed partial class RoomFolders
{
    readonly Dictionary<string, HashSet<string>> _uses = [];

    RoomFolders(IReadOnlyCollection<RoomFile> files)
    {
        var types = files.GroupBy(f => f.Folder).ToDictionary(g => g.Key, g => g.SelectMany(f => f.Types).ToHashSet());
        foreach (var file in files)
        {
            if (!_uses.TryGetValue(file.Folder, out var used))
            {
                _uses[file.Folder] = used = [];
            }

            used.UnionWith(types.Keys.Where(other => other != file.Folder && file.Uses(other, types[other].Except(types[file.Folder]))));
        }
    }

    /// <summary>The rooms under src, by the names of their folders.</summary>
    public static IEnumerable<string> Rooms =>
        Directory
            .EnumerateDirectories(Path.Combine(Repository.Root, "src"), "Spoolbook*")
            .Select(d => Path.GetFileName(d))
            .Order(StringComparer.Ordinal);

    /// <summary>The folders of a room, by their namespaces.</summary>
    public static RoomFolders Of(string room) =>
        Of(
            from path in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", room), "*.cs", SearchOption.AllDirectories)
            where !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin")
            select File.ReadAllText(path)
        );

    /// <summary>The folders of some file texts.</summary>
    public static RoomFolders Of(IEnumerable<string> files) =>
        new([.. files.Where(text => Namespace().IsMatch(text)).Select(text => new RoomFile(text))]);

    /// <summary>The folders that use each other, directly or through others; each circle as its folders by name.</summary>
    public IEnumerable<string> Circles(IReadOnlySet<string> leftOut)
    {
        var reached = _uses.Keys.Except(leftOut).ToDictionary(f => f, f => Reached(f, leftOut));
        return reached
            .Keys.Where(f => reached[f].Contains(f))
            .Select(f =>
                string.Join(
                    " ↔ ",
                    reached.Keys.Where(other => reached[f].Contains(other) && reached[other].Contains(f)).Order(StringComparer.Ordinal)
                )
            )
            .Distinct();
    }

    HashSet<string> Reached(string folder, IReadOnlySet<string> leftOut)
    {
        var reached = new HashSet<string>();
        var next = new Stack<string>(_uses[folder]);
        while (next.TryPop(out var at))
        {
            if (!leftOut.Contains(at) && reached.Add(at))
            {
                foreach (var further in _uses[at])
                {
                    next.Push(further);
                }
            }
        }

        return reached;
    }

    sealed class RoomFile
    {
        readonly HashSet<string> _usings;
        readonly HashSet<string> _names;
        readonly HashSet<string> _paths;

        public RoomFile(string text)
        {
            var declared = Namespace().Match(text);
            var code = NoCode().Replace(text[declared.Index..], " ");
            Folder = declared.Groups[1].Value;
            Types = [.. Declaration().Matches(text).Select(m => m.Groups[1].Value)];
            _usings = [.. Using().Matches(text).Select(m => m.Groups[1].Value)];
            _names = [.. Name().Matches(code).Select(m => m.Value)];
            _paths = [.. DottedPath().Matches(code).SelectMany(m => Beginnings(m.Value))];
        }

        public string Folder { get; }

        public IReadOnlyCollection<string> Types { get; }

        public bool Uses(string other, IEnumerable<string> types) =>
            _usings.Contains(other)
            || (Folder.StartsWith(other + ".", StringComparison.Ordinal) && types.Any(_names.Contains))
            || types.Any(type =>
                _paths.Contains(other[(other.LastIndexOf('.') + 1)..] + "." + type) || _paths.Contains(other + "." + type)
            );

        // Of a.b.c: a.b and a.b.c.
        static IEnumerable<string> Beginnings(string path)
        {
            for (var dot = path.IndexOf('.', StringComparison.Ordinal); dot >= 0;)
            {
                dot = path.IndexOf('.', dot + 1);
                yield return dot < 0 ? path : path[..dot];
            }
        }
    }

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();

    [GeneratedRegex(@"^using (?:static )?([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Using();

    [GeneratedRegex(
        @"^(?:public |internal )?(?:static |sealed |abstract |partial |readonly )*(?:class|record struct|record|struct|enum"
            + @"|interface) (\w+)",
        RegexOptions.Multiline
    )]
    private static partial Regex Declaration();

    [GeneratedRegex(@"(?<![.\w])[A-Za-z_]\w*")]
    private static partial Regex Name();

    [GeneratedRegex(@"(?<![.\w])(?:[A-Z]\w*\.)+[A-Z]\w*")]
    private static partial Regex DottedPath();

    // Comments, and texts on one line.
    [GeneratedRegex("""//[^\n]*|"(?:[^"\\\n]|\\.)*"  """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex NoCode();
}
