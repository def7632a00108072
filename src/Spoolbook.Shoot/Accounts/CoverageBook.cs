using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// The shot list against what was shot. A shot is got when a take of it on a roll that counts is marked good and has
/// good film. A shot with only a take on hold is not got yet. A test is no take of a shot.
/// </summary>
public sealed record CoverageBook
{
    // The check that a production accepts for a shot that it goes without.
    const string NoGoodTake = "cover/shot-without-good-take";

    /// <summary>The shots of the list, in its order; a name that is written twice is there twice.</summary>
    public required ImmutableArray<CoveredShot> Listed { get; init; }

    /// <summary>Shots with takes that are not listed, in the order of their first takes.</summary>
    public required ImmutableArray<CoveredShot> Unlisted { get; init; }

    /// <summary>The shots that are got, listed or not, in the order in which their first good takes were shot.</summary>
    public required ImmutableArray<CoveredShot> Got { get; init; }

    /// <summary>
    /// The listed shots that are not got nor dropped, in the list's order, each once; null without a shot list, or where it could
    /// not be read completely.
    /// </summary>
    public required ImmutableArray<CoveredShot>? Left { get; init; }

    /// <summary>The shots of the list, each once.</summary>
    public IEnumerable<CoveredShot> ListedOnce => Listed.DistinctBy(s => s.Name, StringComparer.Ordinal);

    /// <summary>The shots of the list that are wanted still, each once: without those dropped.</summary>
    public IEnumerable<CoveredShot> Wanted => ListedOnce.Where(s => !s.IsDropped);

    /// <summary>How many shots of the list are given up.</summary>
    public IEnumerable<CoveredShot> Dropped => ListedOnce.Where(s => s.IsDropped);

    /// <summary>The shots that a paper counts: those of the list, or where there is none, those that were shot.</summary>
    public IEnumerable<CoveredShot> Counted => Listed.IsEmpty ? Unlisted : Wanted;

    /// <summary>The shots that are got, then the other listed ones; each once.</summary>
    public IEnumerable<CoveredShot> GotOrListed => Got.Concat(Listed).DistinctBy(s => s.Name, StringComparer.Ordinal);

    /// <summary>The coverage of a shoot.</summary>
    internal static CoverageBook Keep(ShootBook book)
    {
        var takes = book.Counted.SelectMany(r => r.Layers.Where(l => !l.Take.IsTest).Select(l => new CoveredTake(r, l))).ToList();
        var byShot = takes.ToLookup(t => t.Layer.Take.ShotName, StringComparer.Ordinal);
        var film = book
            .Counted.SelectMany(r => r.Strip.Segments)
            .Where(s => s.Owner is { Take.IsTest: false })
            .GroupBy(s => s.Owner!.Take.ShotName, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => StockBook.Sum(g, s => s.Span.Length), StringComparer.Ordinal);
        var given = book
            .Production.Accept.Where(w => w.Check.Value == NoGoodTake)
            .Select(w => w.Shot?.Value)
            .OfType<string>()
            .ToHashSet(StringComparer.Ordinal);
        CoveredShot Shot(string name, PlannedShot? planned) =>
            new(name, planned, [.. byShot[name]], film.GetValueOrDefault(name)) { IsGivenUp = given.Contains(name) };

        var listed = book.Production.Shots.Select(s => Shot(s.Name, s)).ToImmutableArray();
        var names = listed.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        var unlisted = byShot.Select(g => g.Key).Where(n => !names.Contains(n)).Select(n => Shot(n, null)).ToImmutableArray();
        var byName = listed
            .Concat(unlisted)
            .DistinctBy(s => s.Name, StringComparer.Ordinal)
            .ToDictionary(s => s.Name, StringComparer.Ordinal);
        return new CoverageBook
        {
            Listed = listed,
            Unlisted = unlisted,
            Got =
            [
                .. takes
                    .Where(t => t.IsGood)
                    .OrderBy(t => t.Layer.On)
                    .Select(t => t.Layer.Take.ShotName)
                    .Distinct(StringComparer.Ordinal)
                    .Select(n => byName[n]),
            ],
            Left =
                listed.IsEmpty || book.Production.Unread.Contains(Part.Shots)
                    ? null
                    : [.. listed.Where(s => !s.IsGot && !s.IsDropped).DistinctBy(s => s.Name, StringComparer.Ordinal)],
        };
    }
}
