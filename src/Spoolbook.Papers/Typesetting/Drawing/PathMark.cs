using System.Collections.Immutable;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Typesetting.Drawing;

sealed record PathMark(ImmutableArray<PathStep> Steps, Paint Paint) : PageMark
{
    public override PageMark Shift(double dx, double dy) =>
        this with
        {
            Steps = [.. Steps.Select(s => new PathStep(s.Kind, s.X1 + dx, s.Y1 + dy, s.X2 + dx, s.Y2 + dy, s.X + dx, s.Y + dy))],
        };
}
