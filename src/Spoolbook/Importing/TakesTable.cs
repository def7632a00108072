using Spoolbook.Entry;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Importing;

/// <summary>The heads of the workbook's sheet of takes, for the import.</summary>
internal static class TakesTable
{
    /// <summary>The heads for a production.</summary>
    /// <param name="templates">The source of its words.</param>
    public static TakeHeads Heads(Production production, ITemplateSource templates)
    {
        var vocabulary = TakesVocabulary.Of(production, templates);
        return new(vocabulary.Sheets, vocabulary.Heads.Select(h => (ColumnOf(h.House), h.Called)), vocabulary.Marks);
    }

    // 'From frame' is FromFrame.
    static TakeColumn ColumnOf(string head) => Enum.Parse<TakeColumn>(head.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true);
}
