using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Trees;

/// <summary>A value: always text, whatever it looks like.</summary>
sealed class ScalarNode(Place place, int start, int end, string text, ScalarStyle style) : Node(place, start, end)
{
    public string Text { get; } = text;

    public ScalarStyle Style { get; } = style;

    /// <summary>Empty, <c>~</c> or <c>null</c> without quotes: as if nobody had written it.</summary>
    public bool IsBlank { get; } = style == ScalarStyle.Plain && (text is "" or "~" or "null");

    /// <summary>
    /// A comment that cuts the text off and begins right after its <c>#</c>, as <c>#2</c> does; null where there is none.
    /// </summary>
    public (Place Place, string Text)? Cut { get; init; }

    public override long Weight => 1;

    public override int Height => 0;

    public override Sentence What => Sentence.Of(IsBlank ? "common.node.nothing" : "common.node.value");

    /// <summary>The same value with no characters, at a place where one could be written.</summary>
    public ScalarNode StandingAt(int at) => new(Place, at, at, Text, Style) { Cut = Cut };
}
