using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;

namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>The look of a run of text.</summary>
sealed record TextStyle(Face Face, double Size)
{
    public int Colour { get; init; } = Colours.Ink;

    /// <summary>All digits of one width, so that figures line up in columns.</summary>
    public bool Tabular { get; init; }

    public Decoration Decoration { get; init; }

    /// <summary>Whether its words stay on one line together.</summary>
    public bool OneLine { get; init; }

    /// <summary>How far the text is above its line's baseline, in points.</summary>
    public double Rise { get; init; }

    /// <summary>How it gives way on a label; null elsewhere.</summary>
    public LabelFit? Fit { get; init; }

    /// <summary>What a decoration adds on each side.</summary>
    public double Padding => Decoration == Decoration.None ? 0 : Size * 0.32;

    public double Width(string text) => TextMeasure.Width(text, Face, Size, Tabular) + 2 * Padding;
}
