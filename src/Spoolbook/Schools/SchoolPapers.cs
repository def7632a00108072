using Spoolbook.Papers;
using Spoolbook.Papers.Terms;
using Spoolbook.Shoot.Departments;
using Spoolbook.Writing;

namespace Spoolbook.Schools;

/// <summary>Prints and writes the papers of a school over all its productions.</summary>
/// <param name="Templates">A folder of the user's own templates; null for the house's alone.</param>
internal sealed record SchoolPapers(string? Templates, CommandEnvironment Around)
{
    /// <summary>Makes them in the school's folder; null where one could not be printed.</summary>
    public WrittenPapers? Make(string folder, CheckedProduction found, DepartmentBook book)
    {
        var options = new PrintOptions(Around.Made, Files.Templates(Templates, Around));
        var printed = TermPrinter.Print(book, found.Findings, options);
        if (printed.Failed)
        {
            return null;
        }

        using var work = WorkFolder.Open(Path.Combine(folder, WorkFolder.PapersName), "make", Around);
        return new PaperFolder(work).Put(printed.Files);
    }
}
