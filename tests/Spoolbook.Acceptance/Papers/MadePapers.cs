namespace Spoolbook.Acceptance.Papers;

/// <summary>The papers of the sample and of three awkward productions, made once for all their tests.</summary>
public sealed class MadePapers : IDisposable
{
    static readonly string[] _awkward = ["many-alphabets", "one-take-and-ninety", "forty-rolls", "passes"];

    readonly MadeOnce _made = new();
    readonly IReadOnlyList<string> _papers;

    public MadePapers() =>
        _papers = [
            .. new[] { Repository.Sample }
                .Concat(_awkward.Select(name => Path.Combine(TestFolders.Clean, name)))
                .SelectMany(production => Directory.GetFiles(_made.PapersOf(production)))
                .Order(StringComparer.Ordinal),
        ];

    public string Folder => _made.Folder;

    /// <summary>Every PDF, its production's folder before its name.</summary>
    public IReadOnlyList<string> Pdfs => [.. _papers.Where(file => file.EndsWith(".pdf", StringComparison.Ordinal))];

    /// <summary>Every web page to read.</summary>
    public IReadOnlyList<string> Pages =>
        [.. _papers.Where(file => file.EndsWith(".html", StringComparison.Ordinal) && Path.GetFileName(file) != "pocket-log.html")];

    /// <summary>A paper's name in a failure.</summary>
    public string NameOf(string file) => Path.GetRelativePath(Folder, file);

    public void Dispose() => _made.Dispose();
}
