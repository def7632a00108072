using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>A text without quotes that YAML ends at a <c>#</c>: <c>title: Heron #2</c> is "Heron".</summary>
static class CutText
{
    public static Finding Of(string text, Place cut, string rest) =>
        new(SheetChecks.TextCut, Level.Warning, Sentence.Of("sheet/text-cut.message", ("rest", Quote.Short(rest))), cut)
        {
            Advice = Sentence.Of("sheet/text-cut.help", ("written", Quoted($"{text} {rest}"))),
        };

    static string Quoted(string text) =>
        text.Contains('"') || text.Contains('\\') ? $"'{text.Replace("'", "''", StringComparison.Ordinal)}'" : $"\"{text}\"";
}
