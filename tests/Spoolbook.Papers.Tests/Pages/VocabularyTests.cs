using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Tests.Pages;

public class VocabularyTests
{
    public static readonly TheoryData<string> Examples = [.. Read()];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_the_vocabulary_is_a_page_and_a_pdf(string example)
    {
        var page = Templates.Page(example);
        var pdf = PdfRenderer.Render(page, new PageSetup(Paper.A4), new PdfMeta("Example", "", "en", DateTimeOffset.UnixEpoch));
        Assert.Empty(pdf.Warnings);
        Assert.True(pdf.Pages > 0);
    }

    [Fact]
    public void Every_element_class_and_attribute_has_an_example_or_a_word()
    {
        var text = File.ReadAllText("VOCABULARY.md");
        var shown = Read()
            .Select(example => Templates.Page(example).Root)
            .SelectMany(root => root.DescendantsAndSelf())
            .Select(e => e.Name.LocalName)
            .ToHashSet();
        Assert.Empty(Vocabulary.Elements.Keys.Except(shown));
        Assert.Empty(PictureVocabulary.Elements.Keys.Except(shown));
        var numbered = Vocabulary
            .Elements.Values.SelectMany(rule => rule.Classes.Concat(rule.Attributes))
            .Where(name => !char.IsAsciiDigit(name[^1]));
        Assert.All(numbered.Distinct(), name => Assert.Contains(name, text, StringComparison.Ordinal));
    }

    static IEnumerable<string> Read()
    {
        var parts = File.ReadAllText("VOCABULARY.md").Split("```html\n");
        return parts.Skip(1).Select(part => part[..part.IndexOf("```", StringComparison.Ordinal)]);
    }
}
