using System.Collections.Immutable;
using Spoolbook.Papers.Pdf.Fonts;
using Spoolbook.Press.Drawing;
using Spoolbook.Press.Images;
using Spoolbook.Press.Structure;

namespace Spoolbook.Papers.Pdf.Drawing;

/// <summary>One thing to draw, in points from the top left of what it belongs to. Layout makes marks; only the painter draws.</summary>
abstract record Mark
{
    public abstract Mark Shift(double dx, double dy);
}

sealed record TextMark(double X, double Baseline, string Text, Face Face, double Size, int Colour, bool Tabular) : Mark
{
    public override Mark Shift(double dx, double dy) => this with { X = X + dx, Baseline = Baseline + dy };
}

sealed record BoxMark(double X, double Y, double Width, double Height, Paint Paint) : Mark
{
    public override Mark Shift(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}

sealed record LineMark(double X1, double Y1, double X2, double Y2, double Width, int Colour) : Mark
{
    public ImmutableArray<double> Dashes { get; init; } = [];

    public override Mark Shift(double dx, double dy) => this with { X1 = X1 + dx, Y1 = Y1 + dy, X2 = X2 + dx, Y2 = Y2 + dy };
}

sealed record PathMark(ImmutableArray<PathStep> Steps, Paint Paint) : Mark
{
    public override Mark Shift(double dx, double dy) => this with
    {
        Steps = [.. Steps.Select(s => new PathStep(s.Kind, s.X1 + dx, s.Y1 + dy, s.X2 + dx, s.Y2 + dy, s.X + dx, s.Y + dy))],
    };
}

sealed record ImageMark(double X, double Y, double Width, double Height, PngPicture Picture) : Mark
{
    public override Mark Shift(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}

/// <summary>Marks of which only what lies inside a rectangle is seen.</summary>
sealed record ClipMark(double X, double Y, double Width, double Height, ImmutableArray<Mark> Inside) : Mark
{
    public override Mark Shift(double dx, double dy) => this with
    {
        X = X + dx,
        Y = Y + dy,
        Inside = [.. Inside.Select(mark => mark.Shift(dx, dy))],
    };
}

/// <summary>A rectangle that leads to an address; it belongs to a structure element of its own.</summary>
sealed record LinkMark(double X, double Y, double Width, double Height, string Address, StructureElement Element) : Mark
{
    public override Mark Shift(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}
