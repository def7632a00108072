using System.Text.RegularExpressions;

namespace Spoolbook.Shoot.Tests.Strips;

/// <summary>Only the walk follows a roll's log. A second walker would come to disagree on where the film was, and on which day.</summary>
public partial class OneWalkTests
{
    // Code that reads a log without following it.
    static readonly Dictionary<string, string> Exceptions = new(StringComparer.Ordinal)
    {
        ["Spoolbook.Shoot/Walks/RollWalk.cs"] = "the walk itself",
        ["Spoolbook.Entry/Takes/RollPlan.cs"] = "changes the log while it goes from stand to stand of the walk",
        ["Spoolbook.Papers/WrapSummaries/TakeLink.cs"] = "finds the take whose lines a finding is in",
        ["Spoolbook.Entry/Takes/RowMatch.cs"] = "finds the take that a row is about by its slate",
        ["Spoolbook.Entry/Lines/LineContext.cs"] = "notes what was said last, entry by entry",
        ["Spoolbook.Entry/Logging/NumberedEntry.cs"] = "finds an entry by its number",
        ["Spoolbook.Entry/Logging/RecordEdit.cs"] = "finds the entry that a line amends or strikes",
        ["Spoolbook.Reading/Readers/References.cs"] = "collects the names that are written down",
        ["Spoolbook.Reading/Readers/Borrowing.cs"] = "collects the names that are written down",
        ["Spoolbook.Checks/Kits/NotInKit.cs"] = "collects the bodies that are written down",
        ["Spoolbook.Checks/Loading/ReThreadUnmarked.cs"] = "looks at each reload alone",
        ["Spoolbook.Checks/Loading/InBrightLight.cs"] = "looks at each reload alone",
        ["Spoolbook.Checks/Unjudged/Questions.cs"] = "looks at each entry alone",
        ["Spoolbook.Checks/Counters/Slates.cs"] = "asks what stands between two takes",
        ["Spoolbook.Papers/LogSheets/LogSheetsPaper.cs"] = "looks at each entry alone",
        ["Spoolbook.Shoot/Records/Roll.cs"] = "lists its takes",
    };

    [Fact]
    public void Only_the_walk_follows_a_log()
    {
        var rooms = Path.Combine(Repository.Root, "src");
        var readers =
            from file in Directory.EnumerateFiles(rooms, "*.cs", SearchOption.AllDirectories)
            let name = Path.GetRelativePath(rooms, file).Replace('\\', '/')
            where !name.Split('/').Any(part => part is "bin" or "obj")
            where ReadsALog(name, File.ReadAllText(file))
            select name;
        Assert.Equal(Exceptions.Keys.Order(StringComparer.Ordinal), readers.Order(StringComparer.Ordinal));
    }

    static bool ReadsALog(string name, string text) =>
        AnyLog().IsMatch(text)
        || FoldedLog().IsMatch(text)
        || (name == "Spoolbook.Shoot/Records/Roll.cs" && text.Contains("=> Log.", StringComparison.Ordinal));

    // `roll.Log`, but neither a logarithm, nor the key `log:`, nor a file of findings.
    [GeneratedRegex(@"(?<!Keys|\))\.Log\b(?!\()")]
    private static partial Regex AnyLog();

    // `roll is { Log: [.. var entries] }`
    [GeneratedRegex(@"\bLog: (?:\[|var |\{)")]
    private static partial Regex FoldedLog();
}
