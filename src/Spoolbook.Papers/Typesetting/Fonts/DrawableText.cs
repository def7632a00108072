using System.Collections.Immutable;

namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>A text fit to draw.</summary>
/// <param name="Missing">What the fonts cannot show, each once, in the order of the text: a letter with its accents, or a sign.</param>
/// <param name="Turns">Whether the text asks to run from right to left in letters that the fonts have, which is not done.</param>
readonly record struct DrawableText(string Text, ImmutableArray<string> Missing, bool Turns);
