using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Entry.Tests;

/// <summary>The house's words.</summary>
static class Words
{
    public static Translations In(string language) => Translations.Parse(new HouseTemplates().Find($"words.{language}.txt")!.Text);
}
