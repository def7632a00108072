using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Trees;

/// <summary>A value: always text, whatever it looks like.</summary>
sealed class ScalarNode(Place place, int start, int end, string text, ScalarStyle style) : Node(place, start, end)
{
    public string Text { get; } = text;

    public ScalarStyle Style { get; } = style;

    /// <summary>Nothing, <c>~</c> or <c>null</c> without quotes: as if it were not written.</summary>
    public bool IsBlank { get; } = style == ScalarStyle.Plain && (text is "" or "~" or "null");

    /// <summary>
    /// What cuts the text off on its line: a comment that begins right after its <c>#</c>, as <c>#2</c> does; null where
    /// nothing does.
    /// </summary>
    public (Place Place, string Text)? Cut { get; init; }

    public override long Weight => 1;

    public override int Height => 0;

    public override Sentence What => Sentence.Of(IsBlank ? "common.node.nothing" : "common.node.value");

    /// <summary>The same value, of no characters, where something could be written instead.</summary>
    public ScalarNode StandingAt(int at) => new(Place, at, at, Text, Style) { Cut = Cut };
}
