using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.KitLists;

/// <summary>Something to do before the kit goes back in its case.</summary>
/// <param name="Done">Whether it is logged as done.</param>
public sealed record CareStep(string What, bool Done)
{
    // Common practice, in order: film, spring, gate, filters, caps, then the count.
    internal static ImmutableArray<CareStep> Of(KitBook kit, PaperFormat format)
    {
        var words = format.Words;
        var springs = kit.Pieces.Where(p => p.HasSpring).ToList();
        var films = kit.Pieces.Select(p => p.FilmIn).OfType<Roll>().ToList();
        bool Has(KitKind kind) => kit.Pieces.Any(p => p.Kind == kind);
        var steps = new List<CareStep>();
        void Add(bool needed, string key, bool done = false)
        {
            if (needed)
            {
                steps.Add(new CareStep(words[key], done));
            }
        }

        steps.AddRange(films.Select(f => new CareStep(words.Fill("care-film-in", ("roll", f.Name.Value)), false)));
        Add(Has(KitKind.Body) && films.Count == 0, "care-no-film");
        Add(springs.Count > 0, "care-spring", springs.All(p => p.SpringLeft == SpringLeft.RunDown));
        Add(Has(KitKind.Body), "care-gate");
        Add(Has(KitKind.Filter), "care-filters");
        Add(Has(KitKind.Body), "care-slot");
        Add(Has(KitKind.Lens), "care-lenses");
        Add(Has(KitKind.Body), "care-mount");
        Add(Has(KitKind.Meter), "care-meter");
        Add(Has(KitKind.Motor), "care-motor");
        Add(kit.Pieces.Any(p => p.TakeUp), "care-spools");
        Add(true, "care-told");
        Add(true, "care-count");
        return [.. steps];
    }
}
