using System.Collections.Immutable;

namespace Spoolbook.Papers.Typesetting.Drawing;

sealed record LineMark(double X1, double Y1, double X2, double Y2, double Width, int Colour) : PageMark
{
    public ImmutableArray<double> Dashes { get; init; } = [];

    public override PageMark Shift(double dx, double dy) => this with { X1 = X1 + dx, Y1 = Y1 + dy, X2 = X2 + dx, Y2 = Y2 + dy };
}
