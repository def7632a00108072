using CsCheck;
using Spoolbook.Film.Spools;

namespace Spoolbook.Film.Tests;

public class FilmRollTests
{
    const double Inch = 25.4;
    const double Foot = 304.8;

    static readonly Gen<FilmRoll> _rolls = Gen.Select(Gen.Double[10, 150], Gen.Double[0.1, 0.2], (core, thickness) =>
        new FilmRoll(core, thickness)
    );

    // C10, C11, C12 H: reel capacities, a projectionists' training handbook. C13 H: all three imply 0.0053 in.
    [Theory]
    [InlineData(15, 2, 2729)]
    [InlineData(15, 5, 2470)]
    [InlineData(14, 4, 2223)]
    public void A_reel_holds_as_much_as_its_table_says(double flange, double core, double feet) =>
        Assert.Equal(feet, new FilmRoll(core * Inch, PublishedCores.Polyester).LengthAt(flange * Inch) / Foot, 0.5);

    [Theory]
    [InlineData(15, 2, 2729, 0.0053003)] // C13 H: computed from C10
    [InlineData(15, 5, 2470, 0.0052996)] // C13 H: computed from C11
    [InlineData(14, 4, 2223, 0.0052996)] // C13 H: computed from C12
    public void A_reel_with_its_capacity_gives_the_thickness_away(double flange, double core, double feet, double inches) =>
        Assert.Equal(inches, new FilmRoll(core * Inch, Inch).LengthAt(flange * Inch) / (feet * Foot), 7);

    // C14 M: Metcalfe and Christensen (1938), p. 209: a 7 in reel holds 400 ft; the core is ours, of 2 in or more.
    [Theory]
    [InlineData(2)]
    [InlineData(2.75)]
    public void Four_hundred_feet_go_on_a_seven_inch_reel(double core) =>
        Assert.InRange(new FilmRoll(core * Inch, FilmCore.Acetate).DiameterOf(400 * Foot) / Inch, core, 7);

    // C4 M: Movie Making Made Easy (1937), ch. II: about 5 ft of leader and of trailer; C5 M: so about 110 ft in all.
    // C6 M: an open textbook on analogue film, p. 56: a spool wound by hand takes 1.5 to 2 m over its 30.5 m.
    [Theory]
    [InlineData(100, 10)]
    [InlineData(100, 2 / 0.3048)]
    public void What_a_daylight_spool_holds_beyond_its_hundred_feet_shows_in_its_diameter(double feet, double more)
    {
        var spool = new FilmRoll(FilmCore.DaylightSpool, FilmCore.Acetate);
        var over = spool.DiameterOf((feet + more) * Foot);

        Assert.Equal(feet + more, spool.LengthAt(over) / Foot, 9);
        Assert.InRange(over - spool.DiameterOf(feet * Foot), 1, 5);
    }

    // Computed, D = √(d² + 4tL/π).
    [Theory]
    [InlineData(2, 0.0055, 3.522, 4.561, 6.133, 8.440, 10.239)]
    [InlineData(2, 0.0060, 3.629, 4.726, 6.377, 8.794, 10.677)]
    [InlineData(3, 0.0055, 4.172, 5.080, 6.528, 8.731, 10.480)]
    [InlineData(3, 0.0060, 4.262, 5.228, 6.758, 9.074, 10.909)]
    public void A_roll_of_16mm_has_its_diameter(double core, double thickness, params double[] inches)
    {
        double[] feet = [100, 200, 400, 800, 1200];
        var roll = new FilmRoll(core * Inch, thickness * Inch);

        Assert.All(feet.Zip(inches), row => Assert.Equal(row.Second, roll.DiameterOf(row.First * Foot) / Inch, 3));
    }

    [Fact]
    public void Length_and_diameter_are_inverses() =>
        Gen.Select(_rolls, Gen.Double[0, 500_000])
            .Sample(
                (roll, length) =>
                    Math.Abs(roll.LengthAt(Math.Max(roll.DiameterOf(length), roll.Core)) - length) < 1e-6 * Math.Max(1, length)
            );

    [Fact]
    public void A_reading_error_brackets_the_length() =>
        Gen.Select(_rolls, Gen.Double[0, 200], Gen.Double[0, 5])
            .Sample(
                (roll, beyond, error) =>
                {
                    var diameter = roll.Core + beyond;
                    var (least, most) = roll.LengthBetween(diameter, error);
                    return least <= roll.LengthAt(diameter) && roll.LengthAt(diameter) <= most && least >= 0;
                }
            );

    [Fact]
    public void A_millimetre_of_error_is_more_film_on_a_fuller_roll()
    {
        var roll = new FilmRoll(FilmCore.DaylightSpool, FilmCore.Acetate);
        var (least, most) = roll.LengthBetween(61, 1);

        // dL/dD = π D / 2t, over two millimetres.
        Assert.Equal(Math.PI * 61 / FilmCore.Acetate, most - least, 1e-6);
        Assert.Equal(roll.LengthAt(60), least, 9);
    }

    [Fact]
    public void An_error_that_reaches_the_core_leaves_nothing_for_certain() =>
        Assert.Equal(0, new FilmRoll(50, 0.15).LengthBetween(50.5, 1).Least);

    [Theory]
    [InlineData(PublishedCores.TypeT, 51)] // C1 H: Eastman Kodak H-19, 2 in (51 mm)
    [InlineData(PublishedCores.TypeZ, 76)] // C2 H: Eastman Kodak H-19, 3 in (76 mm)
    public void A_core_is_as_wide_as_its_maker_says(double core, int millimetres) => Assert.Equal(millimetres, Math.Round(core));

    [Theory]
    [InlineData(FilmCore.Acetate, 0.0055, 0.0060)] // C9 M: Richardson, Bluebook, ch. VII: 0.0055 to 0.006 in
    [InlineData(0.0056 * 25.4, 0.0055, 0.0060)] // C7 H: Eastman Kodak H-1-5302: acetate base alone, 0.0056 in
    [InlineData(PublishedCores.Polyester, 0.0047, 0.0057)] // C8 H: H-1-5242t: polyester base 0.0047 in, and an emulsion of about 0.001
    public void A_thickness_lies_where_sources_put_it(double thickness, double least, double most) =>
        Assert.InRange(thickness / 25.4, least - 1e-12, most + 1e-12);

    [Fact]
    public void A_roll_has_a_core_a_thickness_and_film_outside_them()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new FilmRoll(0, 0.15));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FilmRoll(50, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FilmRoll(50, 0.15).LengthAt(49));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FilmRoll(50, 0.15).DiameterOf(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FilmRoll(50, 0.15).LengthBetween(60, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FilmRoll(50, 0.15).LengthBetween(49.5, 1));
        Assert.Equal(0, new FilmRoll(50, 0.15).LengthAt(50));
    }
}
