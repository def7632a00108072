using System.Text;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Acceptance.Silent;

/// <summary>All figures of a production and all its takes, as other programs read them, without what was found.</summary>
static class PrintedFigures
{
    static readonly PrintOptions _options = new(DateTimeOffset.UnixEpoch, new HouseTemplates()) { Only = ["ledger", "takes"] };

    /// <summary>The ledger and the takes; null where nothing could be read, or they cannot be printed.</summary>
    public static string? Of(CheckedProduction found)
    {
        if (found.Books is not { } books)
        {
            return null;
        }

        var text = new StringBuilder();
        foreach (var file in PaperPrinter.Print(books, [], [], _options).Files)
        {
            text.AppendLine(Encoding.UTF8.GetString([.. file.Bytes]));
        }

        return text.ToString();
    }
}
