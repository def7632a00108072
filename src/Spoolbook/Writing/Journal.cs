using System.Collections.Immutable;

namespace Spoolbook.Writing;

/// <summary>
/// What is to be done to several files, written down before it is done. Lines of words, each word as in a web address; the line
/// <c>ready</c> comes last, when every new file is on the disk. What a kill left behind without that line has changed nothing yet.
/// </summary>
/// <param name="Command">The command that changes them.</param>
/// <param name="Subject">What it takes in, for a person: the name of a table, or nothing.</param>
/// <param name="IsKept">Whether journal and old files are kept afterwards, to take the change back.</param>
internal sealed record Journal(string Command, string Subject, bool IsKept, ImmutableArray<JournalEntry> Entries)
{
    const string Head = "spoolbook-journal-1",
        Put = "put",
        Ready = "ready",
        New = ".spoolbook",
        Old = "old-",
        Staged = "new-";

    public static string ReadyLine => Ready + "\n";

    /// <summary>Whether all new files are on the disk.</summary>
    public bool IsReady { get; private init; }

    /// <summary>The name for a new file until it is put in place: short, so that every folder takes it, and nobody's else.</summary>
    public static string NameBeside(string id, int number) => $".{id}-{number}{New}";

    /// <summary>The name for a file that is kept.</summary>
    public static string NameKept(string id, int number) => $"{Old}{id}-{number}";

    /// <summary>The name for a new file that waits in the hidden folder until all of them are made.</summary>
    public static string NameStaged(string id, int number) => $"{Staged}{id}-{number}";

    /// <summary>Whether a name in the hidden folder is that of a file that waits.</summary>
    public static bool IsNameStaged(string name) => name.StartsWith(Staged, StringComparison.Ordinal);

    /// <summary>Whether a name in the hidden folder is that of a file that was kept.</summary>
    public static bool IsNameKept(string name) => name.StartsWith(Old, StringComparison.Ordinal);

    /// <summary>All of it but for the last line.</summary>
    public string Text()
    {
        var lines = Entries.Select(e => Line(Put, e.Name, e.Beside, e.Old, e.New, e.Kept));
        return string.Concat(lines.Prepend(Line(Head, Command, IsKept ? "keep" : "", Subject)));
    }

    /// <summary>What a text says that may break off anywhere; null where not even its first line is whole.</summary>
    public static Journal? Parse(string text)
    {
        var lines = text.Split('\n')[..^1].Select(line => line.Split(' ').Select(Uri.UnescapeDataString).ToArray()).ToArray();
        if (lines is not [[Head, var command, var kept, var subject], .. var rest])
        {
            return null;
        }

        var entries = rest.TakeWhile(words => words is [Put, _, _, _, _, _]).Select(w => new JournalEntry(w[1], w[2], w[3], w[4], w[5]));
        return new Journal(command, subject, kept.Length > 0, [.. entries]) { IsReady = rest is [.., [Ready]] };
    }

    /// <summary>Whether every name is one that Spoolbook gives: a journal can come from anybody, and leads nowhere else.</summary>
    public bool IsOurs() =>
        Entries.All(e =>
            (e.Beside.Length == 0 || (IsPlain(e.Beside) && e.Beside.StartsWith('.') && e.Beside.EndsWith(New, StringComparison.Ordinal)))
            && (e.Kept.Length == 0 || (IsPlain(e.Kept) && IsNameKept(e.Kept)))
        );

    /// <summary>The files that a person knows of.</summary>
    public string Files()
    {
        var names = Entries.Select(e => e.Name).Where(name => !name.StartsWith('.')).ToList();
        return names.Count > 3 ? $"{names.Count} files" : string.Join(", ", names);
    }

    static bool IsPlain(string name) => name.AsSpan().IndexOfAny('/', '\\', ':') < 0;

    static string Line(params IEnumerable<string> words) => string.Join(' ', words.Select(Uri.EscapeDataString)) + "\n";
}
