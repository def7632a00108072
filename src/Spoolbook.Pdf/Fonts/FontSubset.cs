namespace Spoolbook.Pdf.Fonts;

/// <summary>
/// The glyphs of one font that one document uses, numbered by first use. A slot belongs to a glyph and its text, so that
/// copied text is what was written, even for a missing character.
/// </summary>
public sealed class FontSubset(TrueTypeFont font)
{
    // A character map takes no longer text for one glyph.
    const int LongestCluster = 64;

    readonly Dictionary<(ushort Glyph, int Character), int> _numbers = [];
    readonly Dictionary<(ushort Glyph, string Cluster), int> _clusters = [];
    readonly List<FontSlot> _slots = [new(0, "")];

    public TrueTypeFont Font { get; } = font;

    internal IReadOnlyList<FontSlot> Slots => _slots;

    internal int Slot(SetGlyph set)
    {
        if (set.Cluster is { } cluster)
        {
            if (!_clusters.TryGetValue((set.Glyph, cluster), out var known))
            {
                _clusters[(set.Glyph, cluster)] = known = Add(
                    new FontSlot(set.Glyph, Bounded(cluster)) { Accents = set.Accents.IsDefault ? [] : set.Accents }
                );
            }

            return known;
        }
        var key = (set.Glyph, set.Character.Value);
        if (!_numbers.TryGetValue(key, out var number))
        {
            _numbers[key] = number = Add(new FontSlot(set.Glyph, set.Character.ToString()));
        }

        return number;
    }

    int Add(FontSlot slot)
    {
        _slots.Add(slot);
        return _slots.Count - 1;
    }

    static string Bounded(string cluster) =>
        cluster.Length <= LongestCluster
            ? cluster
            : cluster[..(LongestCluster - (char.IsHighSurrogate(cluster[LongestCluster - 1]) ? 1 : 0))];
}
