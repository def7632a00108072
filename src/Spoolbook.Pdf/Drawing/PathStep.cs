namespace Spoolbook.Pdf.Drawing;

/// <summary>One step of a path: its last point is where the pen ends up, the other two are a curve's handles.</summary>
public readonly record struct PathStep(Stroke Kind, double X1, double Y1, double X2, double Y2, double X, double Y)
{
    public static PathStep Move(double x, double y) => new(Stroke.MoveTo, 0, 0, 0, 0, x, y);

    public static PathStep Line(double x, double y) => new(Stroke.LineTo, 0, 0, 0, 0, x, y);

    public static PathStep Curve(double x1, double y1, double x2, double y2, double x, double y) =>
        new(Stroke.CurveTo, x1, y1, x2, y2, x, y);

    public static PathStep Close => new(Stroke.Close, 0, 0, 0, 0, 0, 0);
}
