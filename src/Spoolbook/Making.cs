using System.Collections.Immutable;
using Spoolbook.Papers;
using Spoolbook.Printing;
using Spoolbook.Shipping;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>What <c>make</c> does, and <c>watch</c> again and again: checks, prints, writes, and says what came of it.</summary>
/// <param name="Production">The production, as the command means it.</param>
/// <param name="To">Where the papers go; null for the folder in the production.</param>
/// <param name="Templates">A folder of the user's own templates; null for the house's alone.</param>
/// <param name="Draft">Whether papers are printed in spite of errors.</param>
internal sealed record Making(string Production, string? To, string? Templates, bool Draft, FindingFormat Format)
{
    /// <summary>Whether only findings and the number of papers are said.</summary>
    public bool IsBrief { get; init; }

    /// <summary>How much is said.</summary>
    public Loudness Loudness { get; init; }

    /// <summary>Whether a warning fails as an error does.</summary>
    public bool IsStrict { get; init; }

    /// <summary>Whether it is only said what would be written.</summary>
    public bool IsDry { get; init; }

    /// <summary>The papers as they were printed last in this process; null where they are made once.</summary>
    public PrintedBefore? Before { get; init; }

    /// <summary>The names of the papers to make; all where it is empty.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>The folder of the papers.</summary>
    public string Folder(CommandEnvironment around) =>
        Path.GetFullPath(To is null ? Files.PaperFolder(Production, around) : Path.Combine(around.Folder, To));

    /// <summary>Makes the papers once, and says what came of it.</summary>
    public PipelineResult Run(CommandEnvironment around)
    {
        var findings = new FindingPrinter(Production, Format, around) { IsBrief = IsBrief, Loudness = Loudness };
        var result = Make(around);
        findings.Print(result.Found);
        if (result.Written is not { } written)
        {
            around.Error.WriteLine(
                result.End == PipelineEnd.NotPrinted ? "No paper was written: a template or the logo could not be printed."
                : result.Found.HasErrors ? "No paper was written: mend the errors, or print with --draft."
                : "No paper was written: with --strict a warning stops it, unless you print with --draft."
            );
            return result;
        }

        if (Format == FindingFormat.Text && Loudness != Loudness.Quiet)
        {
            new PaperFolderPrinter(around)
            {
                IsBrief = IsBrief,
                IsDry = IsDry,
                NamesAll = Loudness == Loudness.Verbose,
            }.Print(written.Files, "papers", written.Folder);
        }

        foreach (var note in written.Notes)
        {
            around.Error.WriteLine(Plain.Text(note));
        }

        return result;
    }

    /// <summary>Makes the papers once, and says nothing.</summary>
    public PipelineResult Make(CommandEnvironment around)
    {
        WorkFolder.SettleProduction(Production, "make", around);
        using var work = IsDry ? WorkFolder.LookAt(Folder(around), around) : WorkFolder.Open(Folder(around), "make", around);
        var papers = new PaperStages(Files.OwnTemplates(Templates, around), work, around.Made, Draft, around.Progress)
        {
            Only = Only,
            Before = Before,
            Strict = IsStrict,
            Returned = ReturnedRolls.Of(Path.Combine(around.Folder, Production)),
        };
        return Pipeline.Run(Production, around, around.Papers(papers));
    }
}
