using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers;

/// <summary>Prints every paper of a shoot, in memory.</summary>
public static class PaperPrinter
{
    /// <summary>All the papers, in the order of their names.</summary>
    public static Pressed Print(ShootBook shoot, ImmutableArray<Finding> findings, ImmutableArray<Waived> waived, PrintOptions options)
    {
        try
        {
            return new PrintRun(Books.Of(shoot), findings, waived, options).Print();
        }
        catch (MissingWordException missing)
        {
            return new Pressed([], [PaperFaults.MissingWord(missing.Key, shoot.Production.Language)]);
        }
        catch (UnfitWordException unfit)
        {
            return new Pressed([], [PaperFaults.UnfitWord(unfit.Key, unfit.Reason, shoot.Production.Language)]);
        }
    }
}
