using System.Collections.Immutable;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers;

/// <summary>Prints every paper of a shoot, in memory.</summary>
public static class PaperPrinter
{
    /// <summary>All the papers, by name.</summary>
    public static PrintedPapers Print(Books books, ImmutableArray<Finding> findings, ImmutableArray<Waived> waived, PrintOptions options)
    {
        try
        {
            return new PrintRun(books, findings, waived, options).Print();
        }
        catch (MissingWordException missing)
        {
            return new PrintedPapers([], [PaperFaults.MissingWord(missing.Key, books.Production.Language)]);
        }
        catch (UnfitWordException unfit)
        {
            return new PrintedPapers([], [PaperFaults.UnfitWord(unfit.Key, unfit.Description, books.Production.Language)]);
        }
    }
}
