using System.Text;

namespace Spoolbook.Film.Tests.Reference;

/// <summary>The reference page of formulas: every public member with its doc comment.</summary>
static class FormulaPage
{
    const string Head = """
        # The trade's arithmetic: what each value and formula is

        Generated from the doc comments by `scripts/reference-film`; a test fails where it is out of date.
        Stops are positive where more light reaches the film. A table of check values stands in the tests.

        """;

    /// <summary>What the room calculates with; not what serves every room.</summary>
    public static IEnumerable<Type> Types =>
        typeof(Gauge).Assembly.GetExportedTypes().Where(type => type.Namespace!.StartsWith("Spoolbook.Film", StringComparison.Ordinal));

    public static string Write(DocComments comments)
    {
        var types = Types.Select(type => type.FullName!).ToHashSet(StringComparer.Ordinal);
        var members = comments
            .Names.Where(name => types.Contains(DocNames.Owner(name)))
            .GroupBy(DocNames.Owner, StringComparer.Ordinal)
            .OrderBy(group => group.Key.Count(c => c == '.'))
            .ThenBy(group => group.Key, StringComparer.Ordinal);
        var page = new StringBuilder(Head.ReplaceLineEndings("\n"));
        foreach (var type in members)
        {
            WriteType(page, comments, type);
        }

        return page.ToString();
    }

    static void WriteType(StringBuilder page, DocComments comments, IGrouping<string, string> type)
    {
        var name = "T:" + type.Key;
        page.Append($"\n## {DocNames.Short(name)}\n\n{comments.Summary(name)}\n\n");
        var members = type.Where(member => member != name && IsWorthSaying(comments, member, name));
        foreach (var member in members.OrderBy(member => member, StringComparer.Ordinal))
        {
            WriteMember(page, comments, member);
        }
    }

    // Operators do what anyone expects, and a record's constructor repeats the record.
    static bool IsWorthSaying(DocComments comments, string member, string type)
    {
        var summary = comments.Summary(member);
        return summary.Length > 0 && summary != comments.Summary(type) && !member.Contains(".op_", StringComparison.Ordinal);
    }

    static void WriteMember(StringBuilder page, DocComments comments, string member)
    {
        page.Append($"- **`{DocNames.Short(member)}`** {comments.Summary(member)}\n");
        foreach (var parameter in comments.Parts(member, "param"))
        {
            page.Append($"  - *{(string?)parameter.Attribute("name")}*: {DocComments.Text(parameter)}\n");
        }

        foreach (var returns in comments.Parts(member, "returns"))
        {
            page.Append($"  - gives: {DocComments.Text(returns)}\n");
        }

        foreach (var error in comments.Parts(member, "exception"))
        {
            page.Append($"  - error `{DocNames.Short((string)error.Attribute("cref")!)}`: {DocComments.Text(error)}\n");
        }
    }
}
