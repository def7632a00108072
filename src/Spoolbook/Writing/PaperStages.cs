using System.Collections.Immutable;
using Spoolbook.Checks.Ruling;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Writing;

/// <summary>
/// The stages after the checks: prints the papers, and writes them into their folder. Where the papers there were made from the same,
/// they are left as they are.
/// </summary>
/// <param name="own">The user's own templates; null for the house's alone.</param>
/// <param name="work">Where they go.</param>
/// <param name="made">The date of making on them.</param>
/// <param name="draft">Whether they are printed in spite of errors.</param>
internal sealed class PaperStages(ITemplateSource? own, WorkFolder work, DateTimeOffset made, bool draft, Progress progress) : IPaperStages
{
    public bool Draft => draft;

    public bool Strict { get; init; }

    /// <summary>The papers as they were printed last in this process; null where they are printed once.</summary>
    public PrintedBefore? Before { get; init; }

    /// <summary>The names of the papers to print; all where it is empty.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>What came back from the lab, by the roll's name.</summary>
    public ImmutableSortedDictionary<string, CanReturn> Returned { get; init; } = ImmutableSortedDictionary<string, CanReturn>.Empty;

    public WorkFolder Folder => work;

    public PrintingStage Print(CheckedProduction found)
    {
        var asked = own is null ? null : new AskedTemplates(own);
        var key = PaperOrigin.KeyOf(found, made, draft, own is not null, Returned);
        if (AsBefore(key, asked) is { } before)
        {
            return new PrintingStage([], _ => before) { IsAsBefore = true };
        }

        var options = new PrintOptions(made, new HouseTemplates(asked))
        {
            Only = Only,
            Before = Before,
            Staging = Before is null && !work.IsLookedAt ? new PaperStaging(work) : null,
            Rules = HouseLevels.Changes(found.Books!.Production),
            NotLookedAt = found.NotLookedAt,
            Returned = Returned,
        };
        PrintedPapers printed;
        try
        {
            printed = PaperPrinter.Print(found.Books, found.Findings, found.Waived, options);
        }
        catch (PaperException broken)
        {
            progress.File = broken.Paper;
            throw;
        }

        // What printing found has to be found again.
        var origin = printed.Faults.IsEmpty ? new PaperOrigin(key, asked?.Asked ?? ImmutableDictionary<string, string>.Empty) : null;
        return new PrintingStage(printed.Faults, folder => new PaperFolder(folder).Put(printed.Files, origin, !Only.IsEmpty));
    }

    WrittenPapers? AsBefore(string key, AskedTemplates? asked) =>
        PaperOrigin.Read(work.Folder) is { } origin && origin.Key == key && asked?.AreStill(origin.Templates) != false
            ? new PaperFolder(work).Untouched()
            : null;
}
