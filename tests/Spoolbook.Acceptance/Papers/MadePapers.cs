using Spoolbook.Acceptance.Folders;

namespace Spoolbook.Acceptance.Papers;

/// <summary>The papers of the sample and of three awkward productions, made once for all who judge them.</summary>
public sealed class MadePapers : IDisposable
{
    static readonly string[] _awkward = ["many-alphabets", "one-take-and-ninety", "forty-rolls", "passes"];

    readonly Bench _bench = new();

    public MadePapers()
    {
        foreach (string production in (string[])[Repository.Sample, .. _awkward.Select(name => Path.Combine(TestFolders.Clean, name))])
        {
            string name = Path.GetFileName(production);
            Assert.Equal(0, _bench.Run("make", production, "--out", name).Status);
        }
    }

    public string Folder => _bench.Folder;

    /// <summary>Every PDF, its production's folder before its name.</summary>
    public IReadOnlyList<string> Pdfs => [.. Directory.EnumerateFiles(Folder, "*.pdf", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    /// <summary>What a paper is called in a failure.</summary>
    public string NameOf(string file) => Path.GetRelativePath(Folder, file);

    public void Dispose() => _bench.Dispose();
}
