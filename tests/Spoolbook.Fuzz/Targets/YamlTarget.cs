using Spoolbook.Fuzz.Mutations;
using Spoolbook.Reading.Files;

namespace Spoolbook.Fuzz.Targets;

/// <summary>A production through reading and all checks: one file, or a folder of them.</summary>
internal sealed class YamlTarget : ITarget
{
    const string Unnamed = "production.yaml";

    public string Name => "yaml";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. YamlKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        var found = Pipeline.Run(Files(input)).Found;
        Printing.All(found);
        return found.Findings.Select(f => f.Check).Append(found.Book is null ? "unread" : "read").Distinct();
    }

    static TextFiles Files(byte[] input)
    {
        var files = Bundle.Open(input).ConvertAll(f => (Name: Plain(f.Name), f.Bytes));
        return files is [(Unnamed, var only)] && TextDecoder.Decode(only).Text is { } text
            ? TextFiles.OneFile(text)
            : TextFiles.OfBytes([.. files.DistinctBy(f => f.Name)]);
    }

    // Hostile names are another target's.
    static string Plain(string name) => name.Length == 0 ? Unnamed : string.Concat(name.Where(c => c is > ' ' and <= '~'));
}
