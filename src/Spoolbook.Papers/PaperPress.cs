using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers;

/// <summary>What a press run needs from outside.</summary>
/// <param name="Made">The date of making that papers carry.</param>
/// <param name="Templates">Where templates, words and the style sheet come from.</param>
public sealed record PressOptions(DateTimeOffset Made, ITemplateSource Templates)
{
    /// <summary>What the production's own rules set otherwise than the house does.</summary>
    public ImmutableArray<RuleChange> Rules { get; init; } = [];
}

/// <summary>A file of the papers.</summary>
public sealed record PaperFile(string Name, ImmutableArray<byte> Bytes);

/// <summary>What came off the press: every file, or the faults that kept one from being printed.</summary>
public sealed record PrintedPapers(ImmutableArray<PaperFile> Files, ImmutableArray<Finding> Faults)
{
    /// <summary>Whether a template was at fault, so that nothing is to be written.</summary>
    public bool Failed => Faults.Any(f => f.Level == Level.Error);
}

/// <summary>Prints every paper of a shoot, in memory.</summary>
public static class PaperPress
{
    /// <summary>All the papers, in the order of their names.</summary>
    public static PrintedPapers Print(Books books, ImmutableArray<Finding> findings, ImmutableArray<Waived> waived, PressOptions options)
    {
        try
        {
            return new PressRun(books, findings, waived, options).Print();
        }
        catch (MissingWordException missing)
        {
            return new PrintedPapers([], [PaperFaults.MissingWord(missing, books.Production.Language)]);
        }
        catch (UnfitWordException unfit)
        {
            return new PrintedPapers([], [PaperFaults.UnfitWord(unfit, books.Production.Language)]);
        }
    }
}
