using Spoolbook.Fuzz.Mutations;

namespace Spoolbook.Fuzz.Targets;

/// <summary>A plain table of takes.</summary>
internal sealed class CsvTarget : ITarget
{
    public string Name => "csv";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. CsvKinds.All];

    public IEnumerable<string> Run(byte[] input) => TableImport.Run("takes.csv", input);
}
