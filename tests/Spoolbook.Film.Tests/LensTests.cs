using CsCheck;
using Spoolbook.Film.Lenses;

namespace Spoolbook.Film.Tests;

public class LensTests
{
    const double Inch = 25.4;
    const double Foot = 304.8;

    // G1 H: Brown, p. 277. G3 H: Eastman Kodak's slides on cameras and lenses: 50 mm, 0.001 in, with the engraved number.
    [Theory]
    [InlineData(1.4, 230.7)]
    [InlineData(2, 161.5)]
    [InlineData(2.8, 115.3)]
    [InlineData(4, 80.7)]
    [InlineData(5.6, 57.7)]
    [InlineData(8, 40.4)]
    [InlineData(11, 29.4)]
    [InlineData(16, 20.2)]
    [InlineData(22, 14.7)]
    [InlineData(32, 10.1)]
    public void The_hyperfocal_distance_is_as_tabled(double number, double feet) =>
        Assert.Equal(feet, DepthOfField.HyperfocalOf(50, Stop.OfNumber(number).EngravedNumber, 0.001 * Inch) / Foot, 0.051);

    // Computed. G4 H: Kodak's guide, p. 70, and D. Samuelson: 1/500, 1/1000 and 1/2000 in are choices. G5 H: 0.015 mm in 16 mm.
    [Theory]
    [InlineData(10, 2.8, 0.015, 7.81)]
    [InlineData(16, 4, 0.015, 14.00)]
    [InlineData(25, 4, 0.015, 34.18)]
    [InlineData(25, 8, 0.015, 17.09)]
    [InlineData(50, 4, 0.015, 136.7)]
    [InlineData(25, 4, Inch / 2000, 40.36)]
    [InlineData(25, 4, Inch / 1000, 20.18)]
    [InlineData(50, 4, Inch / 1000, 80.73)]
    [InlineData(50, 4, Inch / 500, 40.365)]
    public void The_circle_of_confusion_is_an_input(double focal, double number, double circle, double feet) =>
        Assert.Equal(feet, DepthOfField.HyperfocalOf(focal, number, circle) / Foot, 0.055);

    // G8 M: Eastman Kodak AA-26, as quoted: 50 mm at f/8 has an aperture of F/N = 6.25 mm, and a point may blur to 1/30 of a degree.
    [Fact]
    public void The_angular_criterion_puts_the_hyperfocal_distance_at_the_aperture_over_the_angle()
    {
        var circle = DepthOfField.CircleOfAngle(50, 1 / 30.0);

        Assert.Equal(0.00625, 0.05 / 8);
        Assert.Equal(6.25 / Math.Tan(Math.PI / 180 / 30), DepthOfField.HyperfocalOf(50, 8, circle), 6);
        Assert.Equal(10_743, DepthOfField.HyperfocalOf(50, 8, circle), 0.5);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(50, 0)]
    [InlineData(50, 90)]
    public void A_blur_is_an_angle_of_a_lens(double focal, double degrees) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DepthOfField.CircleOfAngle(focal, degrees));

    // G2 H: Brown, p. 277.
    [Fact]
    public void Focused_at_the_hyperfocal_distance_all_is_sharp_from_half_of_it()
    {
        var hyperfocal = DepthOfField.HyperfocalOf(25, 4, 0.015);
        var depth = DepthOfField.Of(25, 4, 0.015, hyperfocal + 60);

        Assert.Equal(0.5, depth.Near / hyperfocal, 2);
        Assert.Equal(double.PositiveInfinity, depth.Far);
        Assert.Equal(double.PositiveInfinity, depth.Total);
    }

    // G6 H, from memory: H s / (H ± s), where the subject is far beyond the focal length. G7 H: measured from the film plane.
    [Theory]
    [InlineData(25, 4, 1829)]
    [InlineData(10, 5.6, 1219)]
    [InlineData(75, 8, 9144)]
    public void Far_subjects_agree_with_the_textbooks_simple_form(double focal, double number, double focus)
    {
        var depth = DepthOfField.Of(focal, number, 0.015, focus);
        var hyperfocal = depth.Hyperfocal;

        Assert.Equal(hyperfocal * focus / (hyperfocal + focus), depth.Near, focus * 0.01);
        Assert.True(
            hyperfocal <= focus
                ? double.IsPositiveInfinity(depth.Far)
                : Math.Abs(depth.Far - (hyperfocal * focus / (hyperfocal - focus))) < depth.Far * 0.03
        );
    }

    [Fact]
    public void The_limits_bracket_the_focus() =>
        Gen.Select(Gen.Double[5, 300], Gen.Double[1, 32], Gen.Double[0.005, 0.06], Gen.Double[4.01, 10_000])
            .Sample(
                (focal, number, circle, focals) =>
                {
                    var focus = focal * focals;
                    var depth = DepthOfField.Of(focal, number, circle, focus);
                    return depth.Near < focus && focus < depth.Far && depth.Near > 0 && depth.Total == depth.Far - depth.Near;
                }
            );

    [Fact]
    public void A_smaller_opening_is_sharper_both_ways() =>
        Gen.Select(Gen.Double[5, 100], Gen.Double[1, 16], Gen.Double[10, 1000])
            .Sample(
                (focal, number, focals) =>
                {
                    var (wide, small) = (
                        DepthOfField.Of(focal, number, 0.015, focal * focals),
                        DepthOfField.Of(focal, number * 1.5, 0.015, focal * focals)
                    );
                    return small.Near < wide.Near && small.Far >= wide.Far;
                }
            );

    [Fact]
    public void The_blur_at_each_limit_is_the_circle_of_confusion() =>
        Gen.Select(Gen.Double[8, 100], Gen.Double[1.4, 16], Gen.Double[5, 200])
            .Sample(
                (focal, number, focals) =>
                {
                    var focus = focal * focals;
                    var depth = DepthOfField.Of(focal, number, 0.015, focus);
                    var image = ThinLens.ImageDistance(focal, focus);
                    return Math.Abs(Blur(depth.Near) - 0.015) < 1e-7
                        && (double.IsInfinity(depth.Far) || Math.Abs(Blur(depth.Far) - 0.015) < 1e-7);

                    double Blur(double distance)
                    {
                        var subject = distance - image;
                        var sharp = focal * subject / (subject - focal);
                        return focal / number * Math.Abs(sharp - image) / sharp;
                    }
                }
            );

    // The formula puts the far limit at infinity where the subject, measured from the lens, is a focal length beyond H.
    [Fact]
    public void The_far_limit_runs_away_to_infinity_one_focal_length_beyond_the_hyperfocal_distance()
    {
        var hyperfocal = DepthOfField.HyperfocalOf(50, 2, 0.025);
        static double FocusFor(double subject) => subject + (50 * subject / (subject - 50));

        Assert.False(double.IsInfinity(DepthOfField.Of(50, 2, 0.025, FocusFor(hyperfocal + 49)).Far));
        Assert.True(double.IsInfinity(DepthOfField.Of(50, 2, 0.025, FocusFor(hyperfocal + 51)).Far));
    }

    [Fact]
    public void At_infinity_all_is_sharp_from_the_hyperfocal_distance()
    {
        var depth = DepthOfField.Of(25, 4, 0.015, double.PositiveInfinity);

        Assert.Equal(depth.Hyperfocal + 25, depth.Near);
        Assert.Equal(double.PositiveInfinity, depth.Far);
    }

    [Fact]
    public void A_thin_lens_makes_its_image_where_the_equation_says() =>
        Gen.Select(Gen.Double[5, 300], Gen.Double[4.01, 10_000])
            .Sample(
                (focal, focals) =>
                {
                    var image = ThinLens.ImageDistance(focal, focal * focals);
                    var subject = (focal * focals) - image;
                    return Math.Abs((1 / subject) + (1 / image) - (1 / focal)) < 1e-9
                        && image <= subject
                        && ThinLens.Extension(focal, focal * focals) >= 0;
                }
            );

    [Fact]
    public void At_four_focal_lengths_the_picture_is_life_size()
    {
        Assert.Equal(50, ThinLens.ImageDistance(25, 100), 9);
        Assert.Equal(25, ThinLens.Extension(25, 100), 9);
    }

    // Computed, 2 atan (w / 2F), with G11 and G12.
    [Theory]
    [InlineData("16mm", 10, 54.32, 41.06)]
    [InlineData("16mm", 16, 35.55, 26.35)]
    [InlineData("16mm", 25, 23.19, 17.04)]
    [InlineData("16mm", 50, 11.72, 8.57)]
    [InlineData("16mm", 75, 7.83, 5.72)]
    [InlineData("Super 16", 10, 64.09, 40.66)]
    [InlineData("Super 16", 16, 42.74, 26.08)]
    [InlineData("Super 16", 25, 28.12, 16.86)]
    [InlineData("Super 16", 50, 14.27, 8.48)]
    public void A_lens_sees_so_many_degrees(string gauge, double focal, double across, double up)
    {
        var view = FieldOfView.Of(focal, Gauge.Named(gauge)!.Aperture);

        Assert.Equal(across, view.Horizontal, 2);
        Assert.Equal(up, view.Vertical, 2);
        Assert.InRange(view.Diagonal, view.Horizontal, view.Horizontal + view.Vertical);
    }

    // G16 M: a text on depth of field: 12° is 50 mm on 16 mm and 100 mm on 35 mm.
    [Theory]
    [InlineData("16mm", 50, 0.5)]
    [InlineData("35mm", 100, 2.3)]
    public void Twelve_degrees_is_twice_the_lens_on_35mm(string gauge, double focal, double within) =>
        Assert.Equal(12, FieldOfView.Of(focal, Gauge.Named(gauge)!.Aperture).Horizontal, within);

    [Fact]
    public void The_field_at_a_distance_is_the_picture_scaled_up()
    {
        var (width, height) = FieldOfView.At(25, Gauge.Film16.Aperture, 100);

        Assert.Equal(10.26, width, 9);
        Assert.Equal(7.49, height, 9);
        Assert.Equal(2 * 7.49, FieldOfView.At(25, Gauge.Film16.Aperture, 112.5).Height, 9);
        Assert.Equal(10_000 * 10.26 / 25, FieldOfView.At(25, Gauge.Film16.Aperture, 10_000).Width, 25.0);
    }

    [Fact]
    public void The_diagonal_is_seen_under_its_own_angle() =>
        Assert.Equal(2 * Math.Atan(5 / 2.0) * 180 / Math.PI, FieldOfView.Of(1, new CameraAperture(3, 4)).Diagonal, 9);

    [Fact]
    public void A_lens_has_a_length_an_opening_and_a_nearest_focus()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DepthOfField.HyperfocalOf(0, 4, 0.015));
        Assert.Throws<ArgumentOutOfRangeException>(() => DepthOfField.HyperfocalOf(25, 0, 0.015));
        Assert.Throws<ArgumentOutOfRangeException>(() => DepthOfField.HyperfocalOf(25, 4, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DepthOfField.Of(25, 4, 0.015, 99));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThinLens.ImageDistance(0, 99));
        Assert.Throws<ArgumentOutOfRangeException>(() => FieldOfView.Of(0, Gauge.Film16.Aperture));
    }

    [Fact]
    public void A_lens_focuses_no_nearer_than_life_size()
    {
        Assert.Equal(100, ThinLens.NearestFocus(25));
        Assert.Equal(25, ThinLens.Extension(25, ThinLens.NearestFocus(25)), 9);
    }
}
