using System.Collections.Immutable;
using Spoolbook.Checks.Accepting;
using Spoolbook.Reading.Files;
using Spoolbook.Schools;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Writing;

namespace Spoolbook.Shipping;

/// <summary>The productions of a school, checked.</summary>
/// <param name="Productions">Those that can be read.</param>
/// <param name="Unreadable">The folders of the others.</param>
internal sealed record ShippingSchool(ImmutableArray<SchoolProduction> Productions, ImmutableArray<string> Unreadable)
{
    /// <summary>What each accepted, by folder.</summary>
    public ImmutableDictionary<string, ImmutableArray<Waived>> Waived { get; private init; } =
        ImmutableDictionary<string, ImmutableArray<Waived>>.Empty;

    ImmutableDictionary<string, SourceTexts> Sources { get; init; } = ImmutableDictionary<string, SourceTexts>.Empty;

    /// <param name="folder">The school's folder, in full.</param>
    public static ShippingSchool Read(string folder, CommandEnvironment around)
    {
        var productions = ImmutableArray.CreateBuilder<SchoolProduction>();
        var unreadable = ImmutableArray.CreateBuilder<string>();
        var waived = ImmutableDictionary.CreateBuilder<string, ImmutableArray<Waived>>(StringComparer.Ordinal);
        var sources = ImmutableDictionary.CreateBuilder<string, SourceTexts>(StringComparer.Ordinal);
        foreach (var path in ProductionFolders.Below(folder))
        {
            var name = NameOf(folder, path);
            // The school's own folder is settled when it is opened, and this process holds it then.
            if (name.Length > 0)
            {
                WorkFolder.SettleProduction(path, "ship", around);
            }

            var found = Pipeline.Run(path, around).Found;
            sources[name] = found.Sources;
            if (found.Books is { } books)
            {
                productions.Add(new SchoolProduction(name, books, found.HasErrors));
                waived[name] = found.Waived;
            }
            else
            {
                unreadable.Add(name);
            }
        }

        return new ShippingSchool(productions.ToImmutable(), unreadable.ToImmutable())
        {
            Waived = waived.ToImmutable(),
            Sources = sources.ToImmutable(),
        };
    }

    /// <summary>What keeps a consignment from being made because a production cannot be read at all.</summary>
    public IEnumerable<Finding> Faults(IReadOnlySet<string> without) =>
        Unreadable.Where(name => !without.Contains(name)).Select(ShipmentFaults.Unreadable);

    /// <summary>Findings at the levels that the productions they are in set, without what those accept.</summary>
    public IEnumerable<Finding> Standing(IEnumerable<Finding> findings) =>
        findings.SelectMany(finding => HomeOf(finding.Place) is { } home ? Waivers.Standing([finding], home.Books.Production) : [finding]);

    /// <summary>A line of a production's file, by the file's path from the school's folder; null where there is none.</summary>
    public string? LineOf(string file, int line)
    {
        var name = Sources.Keys.Where(n => n.Length == 0 || file.StartsWith(n + "/", StringComparison.Ordinal)).MaxBy(n => n.Length);
        return name is null ? null : Sources[name].Line(name.Length == 0 ? file : file[(name.Length + 1)..], line);
    }

    SchoolProduction? HomeOf(Place place) => Productions.Where(p => p.Holds(place)).MaxBy(p => p.Folder.Length);

    /// <summary>The folder that a person means by a folder's name or a production's code; null where there is none.</summary>
    public string? FolderOf(string named)
    {
        var folder = named.Replace('\\', '/').TrimEnd('/');
        return Productions.Select(p => p.Folder).Concat(Unreadable).FirstOrDefault(f => f == folder)
            ?? Productions.FirstOrDefault(p => LabNames.Plain(p.Code) == LabNames.Plain(named))?.Folder;
    }

    static string NameOf(string folder, string path)
    {
        var name = Path.GetRelativePath(folder, path).Replace('\\', '/');
        return name == "." ? "" : name;
    }
}
