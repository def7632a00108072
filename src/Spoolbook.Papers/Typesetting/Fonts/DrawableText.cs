using System.Collections.Immutable;

namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>A text fit to draw.</summary>
/// <param name="Missing">What the fonts lack, each once, in the order of the text: a letter with its accents, or a sign.</param>
/// <param name="Turns">Whether the text has a right-to-left mark around letters that the fonts have, which is ignored.</param>
readonly record struct DrawableText(string Text, ImmutableArray<string> Missing, bool Turns);
