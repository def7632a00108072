using Spoolbook.Papers;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Intake.Tests;

/// <summary>The house's words.</summary>
static class Words
{
    public static WordList In(string language) => WordList.Parse(new HouseTemplates().Find($"words.{language}.txt")!.Text);
}
