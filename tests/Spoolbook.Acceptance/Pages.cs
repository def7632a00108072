using UglyToad.PdfPig;

namespace Spoolbook.Acceptance;

/// <summary>Reads PDF pages with an outside reader.</summary>
internal static class Pages
{
    /// <summary>The text of each page, in the order of its content.</summary>
    public static IReadOnlyList<string> TextOf(string path)
    {
        using var document = PdfDocument.Open(path);
        return [.. document.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text)))];
    }
}
