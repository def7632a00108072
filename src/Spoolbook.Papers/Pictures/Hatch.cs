using System.Text;

namespace Spoolbook.Papers.Pictures;

/// <summary>
/// Patterns as plain lines: a photocopy keeps lines and loses tones, and not every renderer has patterns. Lines are on
/// one grid over the whole picture, so that neighbours join.
/// </summary>
static class Hatch
{
    /// <summary>Lines that rise to the right.</summary>
    public static string Rising(Box box, double step)
    {
        var d = new StringBuilder();
        for (var sum = First(box.X + box.Y, step); sum < box.Right + box.Bottom; sum += step)
        {
            Add(d, Math.Max(box.X, sum - box.Bottom), Math.Min(box.Right, sum - box.Y), x => sum - x);
        }

        return d.ToString();
    }

    /// <summary>Lines that fall to the right.</summary>
    public static string Falling(Box box, double step)
    {
        var d = new StringBuilder();
        for (var difference = First(box.X - box.Bottom, step); difference < box.Right - box.Y; difference += step)
        {
            Add(d, Math.Max(box.X, difference + box.Y), Math.Min(box.Right, difference + box.Bottom), x => x - difference);
        }

        return d.ToString();
    }

    /// <summary>Level lines.</summary>
    public static string Level(Box box, double step)
    {
        var d = new StringBuilder();
        for (var y = box.Y + (step / 2); y < box.Bottom; y += step)
        {
            Add(d, box.X, box.Right, _ => y);
        }

        return d.ToString();
    }

    /// <summary>Upright lines.</summary>
    public static string Upright(Box box, double step)
    {
        var d = new StringBuilder();
        for (var x = First(box.X, step) + step; x < box.Right; x += step)
        {
            Line(d, x, box.Y, x, box.Bottom);
        }

        return d.ToString();
    }

    /// <summary>One line more of a path.</summary>
    public static void Line(StringBuilder d, double x1, double y1, double x2, double y2)
    {
        d.Append('M').Append(SvgWriter.N(x1)).Append(' ').Append(SvgWriter.N(y1));
        d.Append('L').Append(SvgWriter.N(x2)).Append(' ').Append(SvgWriter.N(y2));
    }

    static double First(double from, double step) => Math.Floor(from / step) * step;

    static void Add(StringBuilder d, double left, double right, Func<double, double> height)
    {
        if (left < right)
        {
            Line(d, left, height(left), right, height(right));
        }
    }
}
