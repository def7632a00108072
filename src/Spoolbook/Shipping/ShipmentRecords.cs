using System.Collections.Immutable;
using Spoolbook.Printing;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Shipments;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Writing;

namespace Spoolbook.Shipping;

/// <summary>The records of a school's consignments, as they are on the disk.</summary>
/// <param name="Found">What each folder's record says, in the order of their names.</param>
internal sealed record ShipmentRecords(ImmutableArray<ReadShipment> Found)
{
    /// <summary>Where consignments are unless told otherwise, from the school's folder.</summary>
    public const string UsualFolder = "shipments";

    /// <summary>The names of folders with anything in them, which no new consignment takes.</summary>
    public ImmutableArray<string> Taken { get; private init; } = [];

    public ImmutableArray<ShipmentRecord> Records => [.. Found.Select(f => f.Record).OfType<ShipmentRecord>()];

    /// <summary>Whether a record cannot be read, so that nobody knows what went.</summary>
    public bool HasErrors => Found.Any(f => f.Record is null);

    /// <summary>Reads all of them.</summary>
    /// <param name="school">The school's folder, in full.</param>
    /// <param name="folder">Where they are, from there.</param>
    public static ShipmentRecords Read(string school, string folder)
    {
        var at = Path.Combine(school, folder);
        if (!Directory.Exists(at))
        {
            return new ShipmentRecords([]);
        }

        var names = Directory.EnumerateDirectories(at).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal).ToList();
        return new ShipmentRecords([
            .. from name in names
            let path = Path.Combine(at, name, ShipmentFile.Name)
            where File.Exists(path)
            select ShipmentFile.Read($"{folder}/{name}/{ShipmentFile.Name}", TextDecoder.Decode(FileState.Bytes(path))),
        ])
        {
            Taken = [.. names.Where(name => Directory.EnumerateFileSystemEntries(Path.Combine(at, name)).Any())],
        };
    }

    /// <summary>Says what is wrong with records.</summary>
    public void PrintFindings(CommandEnvironment around)
    {
        foreach (var read in Found)
        {
            var text = new FindingText(new Ink(around.Colour), around, read.Sources.Line);
            foreach (var line in read.Findings.SelectMany(text.Lines))
            {
                around.Out.WriteLine(line);
            }
        }
    }

    /// <summary>Why a folder holds no consignments; null where it may. Everything lies below the school's folder, under its lock.</summary>
    public static string? Objection(string folder) =>
        folder.Length > 0 && JournalFile.LeadsDown(folder)
            ? null
            : $"consignments are kept below the folder: '{folder}' leads out of it. Name a folder in it, as --out shipments.";
}
