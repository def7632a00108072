using CsCheck;
using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

public class MeterTests
{
    static readonly Gen<double> _positive = Gen.Double[0.01, 10_000];

    // D21 H: GNU units, after ASA PH2.12-1961.
    [Fact]
    public void Aperture_and_time_values_add_up_to_the_exposure_value()
    {
        Assert.Equal(8, Stop.OfNumber(16).Av);
        Assert.Equal(5.585, MeterLaw.Tv(OneOver(48)), 3);
        Assert.Equal(14.643856, MeterLaw.Ev(Stop.OfNumber(16), OneOver(100)), 6);
    }

    // D25 H: photography course; encyclopaedia: 15, exactly 14.97.
    [Fact]
    public void Sixteen_at_one_hundred_and_twenty_fifth_is_EV_15()
    {
        Assert.Equal(14.97, MeterLaw.Ev(Stop.OfNumber(16), OneOver(125)), 2);
        Assert.Equal(15, Math.Round(MeterLaw.Ev(Stop.OfNumber(16), OneOver(125))));
    }

    // D22 H: GNU units states 3200 cd/m² for K 12.5.
    [Fact]
    public void Sixteen_at_one_over_the_index_is_3200_candelas() =>
        Assert.Equal(3200, MeterLaw.CandelasFor(MeterLaw.Ev(Stop.OfNumber(16), OneOver(100)), 100, MeterConstants.K), 6);

    // D23 H: computed by GNU units, iv100(15).
    [Fact]
    public void EV_15_is_its_light()
    {
        Assert.Equal(81920, MeterLaw.LuxFor(15, 100, PublishedMeterConstants.CFlat), 6);
        Assert.Equal(7610.6, MeterLaw.LuxFor(15, 100, PublishedMeterConstants.CFlat) / MeterLaw.LuxInFootcandle, 1);
    }

    // D29 H: American Cinematographer, By the Numbers: Photometrics.
    [Fact]
    public void A_footcandle_is_10_764_lux() => Assert.Equal(10.764, MeterLaw.LuxInFootcandle, 3);

    // D10 H: Eastman Kodak TI2082, EI 500, 24 frames a second, 170°. D11 H: implied C = 24.59 fc at every stop.
    [Theory]
    [InlineData(1.4, 5)]
    [InlineData(2, 10)]
    [InlineData(2.8, 20)]
    [InlineData(4, 40)]
    [InlineData(5.6, 80)]
    [InlineData(8, 160)]
    [InlineData(11, 320)]
    [InlineData(16, 640)]
    public void A_stock_needs_as_much_light_as_its_sheet_says(double number, double footcandles)
    {
        var ev = MeterLaw.Ev(Stop.OfNumber(number), ExposureTime.Of(new Shutter(170), Speed.Normal));
        const double Implied = 24.59 * MeterLaw.LuxInFootcandle;

        Assert.Equal(footcandles, MeterLaw.LuxFor(ev, 500, Implied) / MeterLaw.LuxInFootcandle, footcandles / 1000);
        Assert.Equal(footcandles, MeterLaw.LuxFor(ev, 500, MeterConstants.CCine) / MeterLaw.LuxInFootcandle, footcandles / 50);
    }

    // D13 M: formula attributed to a cinematographer, "25" for an exact 24. D14 H: trade rule, from memory: 100 fc, 2.8, ISO 100, 1/50.
    [Theory]
    [InlineData(4, 800, 48, 24)]
    [InlineData(2.8, 100, 50, 100)]
    [InlineData(1.4, 100, 50, 25)]
    [InlineData(2, 100, 50, 50)]
    [InlineData(4, 100, 50, 200)]
    [InlineData(5.6, 100, 50, 400)]
    [InlineData(8, 100, 50, 800)]
    public void Twenty_five_footcandle_seconds_are_the_rule_of_the_trade(
        double number,
        double index,
        int denominator,
        double footcandles
    ) =>
        Assert.Equal(
            footcandles,
            MeterLaw.LuxFor(MeterLaw.Ev(Stop.OfNumber(number), OneOver(denominator)), index, MeterConstants.CCine)
                / MeterLaw.LuxInFootcandle,
            6
        );

    // D16 H: GNU units. D17 H: ISO 2720:1974 as quoted recommends 10.6 to 13.4, where two makers' 14 does not lie.
    [Fact]
    public void The_reflected_constant_is_a_choice()
    {
        Assert.Equal(12.5, MeterConstants.K);
        Assert.Equal(11.4, PublishedMeterConstants.K1961);
        Assert.Equal(14, PublishedMeterConstants.KHigh);
        Assert.InRange(MeterConstants.K, 10.6, 13.4);
        Assert.InRange(PublishedMeterConstants.K1961, 10.6, 13.4);
    }

    // D18 H: GNU units: 250; 224 lx is 20.83 fc; 322 lx is 30 ± 5 fc. D19 M, from memory: 240 to 400 flat, 320 to 540 dome.
    [Fact]
    public void The_incident_constant_is_a_choice()
    {
        Assert.Equal(250, PublishedMeterConstants.CFlat);
        Assert.Equal(20.83, PublishedMeterConstants.C1961 / MeterLaw.LuxInFootcandle, 0.03);
        Assert.InRange(PublishedMeterConstants.C1971 / MeterLaw.LuxInFootcandle, 25, 35);
        Assert.InRange(PublishedMeterConstants.CFlat, 240, 400);
        Assert.InRange(PublishedMeterConstants.C1971, 320, 540);
        Assert.Equal(269.1, MeterConstants.CCine, 1);
    }

    // D15 H: ISO 2720:1974 as quoted; GNU units.
    [Fact]
    public void Every_form_of_the_meter_law_is_the_same_law() =>
        Gen.Select(_positive, _positive, _positive, Gen.Int[1, 4000])
            .Sample(
                (light, index, constant, denominator) =>
                {
                    var ev = MeterLaw.IncidentEv(light, index, constant);
                    var stop = MeterLaw.StopFor(ev, OneOver(denominator));
                    return Close(Math.Pow(2, ev), light * index / constant)
                        && Close(stop.Number * stop.Number * denominator, light * index / constant)
                        && Close(MeterLaw.LuxFor(ev, index, constant), light)
                        && Close(MeterLaw.CandelasFor(MeterLaw.ReflectedEv(light, index, constant), index, constant), light)
                        && Close(MeterLaw.Ev(stop, OneOver(denominator)), ev);
                }
            );

    [Theory]
    [InlineData(0, 100, 250)]
    [InlineData(1, 0, 250)]
    [InlineData(1, 100, 0)]
    public void A_meter_needs_light_film_and_a_constant(double light, double index, double constant)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MeterLaw.IncidentEv(light, index, constant));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeterLaw.ReflectedEv(light, index, constant));
    }

    // D26 H: Eastman Kodak F-4017: ISO 400 at 1/500; at EI 320 each a stop wider.
    [Theory]
    [InlineData(DaylightKind.SnowOrSand, "22", "16")]
    [InlineData(DaylightKind.BrightSun, "16", "11")]
    [InlineData(DaylightKind.WeakSun, "11", "8")]
    [InlineData(DaylightKind.CloudyBright, "8", "5.6")]
    [InlineData(DaylightKind.OvercastOrShade, "5.6", "4")]
    public void Daylight_asks_for_a_full_stop(DaylightKind kind, string at400, string at320)
    {
        Assert.Equal(at400, FullStop(Daylight.StopFor(kind, 400, OneOver(500))));
        Assert.Equal(at320, FullStop(Daylight.StopFor(kind, 320, OneOver(500))));
    }

    // D24 M: Modern Photography, a wikibook.
    [Theory]
    [InlineData(DaylightKind.BrightSun, 15)]
    [InlineData(DaylightKind.WeakSun, 14)]
    [InlineData(DaylightKind.CloudyBright, 13)]
    [InlineData(DaylightKind.OvercastOrShade, 12)]
    public void Daylight_has_an_exposure_value(DaylightKind kind, int ev) => Assert.Equal(ev, Math.Round(Daylight.Ev100(kind)));

    [Fact]
    public void Bright_sun_is_sixteen_at_one_over_the_index()
    {
        Assert.Equal(14.643856, Daylight.Ev100(DaylightKind.BrightSun), 6);
        Assert.Equal(15.643856, Daylight.Ev100(DaylightKind.SnowOrSand), 6);
        Assert.Equal(8, Daylight.StopFor(DaylightKind.BrightSun, 250, OneOver(250)).Av, 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Daylight.StopFor(DaylightKind.BrightSun, 0, OneOver(250)));
    }

    // D39 H: GNU units, after ISO 6:1993.
    [Theory]
    [InlineData(28, 501.19)]
    [InlineData(26, 316.23)]
    [InlineData(24, 199.53)]
    [InlineData(24.98, 250)]
    public void A_DIN_number_is_a_logarithm(double din, double index)
    {
        Assert.Equal(index, FilmRating.OfDin(din), index / 2000);
        Assert.Equal(din, FilmRating.ToDin(index), 2);
    }

    [Theory]
    [InlineData(100, 200, 1)] // D42 H: US Army photo course SS0508, as in the rows below
    [InlineData(100, 400, 2)] // D42 H
    [InlineData(125, 64, -1)] // D42 H: exactly -0.97
    public void Twice_the_index_is_a_stop(double from, double to, double stops) =>
        Assert.Equal(stops, FilmRating.StopsBetween(from, to), 0.05);

    // D45 H: convention, from memory.
    [Theory]
    [InlineData(500, 1, 1000)]
    [InlineData(500, -1, 250)]
    [InlineData(200, 2, 800)]
    public void A_push_doubles_the_index(double index, double stops, double pushed) =>
        Assert.Equal(pushed, FilmRating.Pushed(index, stops));

    [Fact]
    public void A_film_rated_slower_gets_more_light() => Assert.Equal(1, new FilmRating(500, 250).StopsOver);

    static string FullStop(Stop stop) => new Stop(Math.Round(stop.Av)).ToString();

    static ExposureTime OneOver(int denominator) => new(new Ratio(1, denominator));

    static bool Close(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Max(Math.Abs(a), Math.Abs(b)));
}
