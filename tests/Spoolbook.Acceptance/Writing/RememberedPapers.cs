using System.Collections.Concurrent;
using System.Collections.Immutable;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Writing;

/// <summary>
/// Prints the papers of one record once for all benches: they try the writing hundreds of times, and printing takes most of it.
/// </summary>
sealed class RememberedPapers(IPaperStages usual) : IPaperStages
{
    static readonly ConcurrentDictionary<string, PrintingStage> _printed = new(StringComparer.Ordinal);

    public bool Draft => usual.Draft;

    public WorkFolder Folder => usual.Folder;

    public static IPaperStages Of(IPaperStages usual) => new RememberedPapers(usual);

    public PrintingStage Print(CheckedProduction found)
    {
        var key = PaperOrigin.KeyOf(
            found,
            Workbench.Made,
            Draft,
            hasOwn: false,
            (usual as PaperStages)?.Returned ?? ImmutableSortedDictionary<string, CanReturn>.Empty
        );
        if (_printed.TryGetValue(key, out var known))
        {
            return known;
        }

        var printed = usual.Print(found);
        // What is on the disk already is so in one folder only.
        return printed.IsAsBefore ? printed : _printed.GetOrAdd(key, printed);
    }
}
