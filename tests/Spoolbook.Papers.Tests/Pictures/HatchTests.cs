using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.Tests.Pictures;

public partial class HatchTests
{
    static readonly Gen<Box> AnyBox =
        from x in Gen.Double[0, 700]
        from y in Gen.Double[0, 300]
        from width in Gen.Double[0.5, 300]
        from height in Gen.Double[4, 30]
        select new Box(x, y, width, height);

    // Nothing clips a path, so its lines must end at the box; 0.01 is the rounding of the written numbers.
    [Fact]
    public void Hatching_never_leaves_its_box() =>
        AnyBox.Sample(box =>
            Assert.All(Points(Hatch.Rising(box, 5) + Hatch.Falling(box, 2.6) + Hatch.Level(box, 3) + Hatch.Upright(box, 2.2)), p =>
            {
                Assert.InRange(p.X, box.X - 0.01, box.Right + 0.01);
                Assert.InRange(p.Y, box.Y - 0.01, box.Bottom + 0.01);
            })
        );

    [Fact]
    public void A_box_wider_than_the_step_has_a_line_in_each_direction()
    {
        var box = new Box(100, 10, 12, 12);

        Assert.NotEmpty(Points(Hatch.Rising(box, 5)));
        Assert.NotEmpty(Points(Hatch.Falling(box, 5)));
        Assert.NotEmpty(Points(Hatch.Level(box, 5)));
        Assert.NotEmpty(Points(Hatch.Upright(box, 5)));
    }

    static List<(double X, double Y)> Points(string path) =>
        [.. Point().Matches(path).Select(m => (Number(m.Groups[1].Value), Number(m.Groups[2].Value)))];

    static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"[ML]([-\d.]+) ([-\d.]+)")]
    private static partial Regex Point();
}
