using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Tests.Pages;

/// <summary>Templates in the test itself; the first one is the page.</summary>
sealed class Templates(params (string Name, string Text)[] files) : ITemplateSource
{
    public static PageResult Render(string text, object? facts = null) =>
        TemplateEngine.Render(new Templates(("page.html", text)), "page.html", facts ?? new { });

    public static PageDocument Page(string text, object? facts = null)
    {
        var result = Render(text, facts);
        Assert.Empty(result.Faults);
        return result.Document!;
    }

    public TemplateText? Find(string name) =>
        files.Where(file => file.Name == name).Select(file => new TemplateText(file.Name, file.Text)).FirstOrDefault();
}
