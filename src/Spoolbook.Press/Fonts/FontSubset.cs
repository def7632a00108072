using System.Text;

namespace Spoolbook.Press.Fonts;

/// <summary>
/// The glyphs of one font that one document uses, numbered in the order of their first use. A slot belongs to a glyph
/// and the character that it stands for, so that copied text is what was written, missing characters included.
/// </summary>
public sealed class FontSubset(TrueTypeFont font)
{
    readonly Dictionary<(ushort Glyph, int Character), int> _numbers = [];
    readonly List<(ushort Glyph, int Character)> _slots = [(0, 0)];

    public TrueTypeFont Font { get; } = font;

    internal IReadOnlyList<(ushort Glyph, int Character)> Slots => _slots;

    internal int Slot(ushort glyph, Rune character)
    {
        var key = (glyph, character.Value);
        if (_numbers.TryGetValue(key, out int number)) return number;
        number = _slots.Count;
        _numbers[key] = number;
        _slots.Add(key);
        return number;
    }
}
