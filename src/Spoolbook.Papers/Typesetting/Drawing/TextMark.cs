using Spoolbook.Papers.Typesetting.Fonts;

namespace Spoolbook.Papers.Typesetting.Drawing;

sealed record TextMark(double X, double Baseline, string Text, Face Face, double Size, int Colour, bool Tabular) : PageMark
{
    public override PageMark Shift(double dx, double dy) => this with { X = X + dx, Baseline = Baseline + dy };
}
