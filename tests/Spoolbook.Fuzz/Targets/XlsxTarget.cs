using System.IO.Compression;
using Spoolbook.Fuzz.Mutations;

namespace Spoolbook.Fuzz.Targets;

/// <summary>A workbook with takes: a zip as it is, or a bundle of parts that is packed into one.</summary>
internal sealed class XlsxTarget : ITarget
{
    // A zip's own limit is 65,535 bytes.
    const int MostOfAName = 20_000;

    public string Name => "xlsx";

    public IReadOnlyList<MutationKind> Grammar => [.. XmlKinds.All];

    public IEnumerable<string> Run(byte[] input) => TableImport.Run("takes.xlsx", input is [0x50, 0x4B, ..] ? input : Packed(input));

    static byte[] Packed(byte[] input)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, part) in Bundle.Open(input).Where(p => p.Name.Length <= MostOfAName).Take(100))
            {
                using var stream = zip.CreateEntry(name.Length == 0 ? "nameless" : name, CompressionLevel.Fastest).Open();
                stream.Write(part);
            }
        }

        return bytes.ToArray();
    }
}
