using System.Text.RegularExpressions;

namespace Spoolbook.Shoot.Tests;

/// <summary>Books are kept in one place; all other code reads them.</summary>
public partial class KeptOnceTests
{
    static readonly string KeepingFile = Path.Combine("Spoolbook.Checks", "Running", "Tolerances.cs");

    [Fact]
    public void Nobody_but_the_shoot_keeps_a_book_by_himself() => Assert.Empty(LinesOf(Keeping()));

    [Fact]
    public void The_books_of_a_production_are_made_in_one_place() => Assert.Equal(KeepingFile, Assert.Single(LinesOf(Making())).File);

    static IEnumerable<(string File, string Line)> LinesOf(Regex what)
    {
        var source = Path.Combine(Repository.Root, "src");
        return from file in Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
               let name = Path.GetRelativePath(source, file)
               let parts = name.Split(Path.DirectorySeparatorChar)
               where parts[0] != "Spoolbook.Shoot" && parts[1] is not ("obj" or "bin")
               from line in File.ReadLines(file)
               where what.IsMatch(line)
               select (name, line);
    }

    [GeneratedRegex(@"\.Keep\(|\b(CostLabWork|Effects|Sending|ForecastInput|FilmForecast|CostToEnd|Tally|StripMaker)\.(Of|Make)\(")]
    private static partial Regex Keeping();

    [GeneratedRegex(@"\bBooks\.Of\(")]
    private static partial Regex Making();
}
