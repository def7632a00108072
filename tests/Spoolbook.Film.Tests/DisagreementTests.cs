using Spoolbook.Film.Exposures;
using Spoolbook.Film.Lenses;
using Spoolbook.Film.Spools;

namespace Spoolbook.Film.Tests;

/// <summary>Where sources disagree, there is an input or a choice, and each choice gives its source's figure.</summary>
public class DisagreementTests
{
    // B8 M: Metcalfe (1938) prints 15 min for silent speed, also for 1000 ft of 35 mm; arithmetic has 16:40 at 16 and 14:49 at 18.
    [Fact]
    public void Four_hundred_silent_feet_run_as_long_as_the_speed_makes_them()
    {
        var film = FilmLength.OfFeet(400).In(Gauge.Film16, Speed.Normal);

        Assert.Equal("16:40", RunningTime.Text(film.Seconds(new Speed(16)), 0));
        Assert.Equal("14:49", RunningTime.Text(film.Seconds(new Speed(18)), 0));
    }

    // An explainer on the web gives 2.5 min; 36 ft a minute make 2:46.67.
    [Fact]
    public void A_hundred_feet_at_24_are_not_two_and_a_half_minutes() =>
        Assert.Equal("2:46.67", RunningTime.Text(FilmLength.OfFeet(100).In(Gauge.Film16, Speed.Normal).Seconds(Speed.Normal), 2));

    // Dealers give 2:40 and 3:30; SMPTE 200M runs up to 3715 frames, 2:34.8 and 3:26.4.
    [Theory]
    [InlineData(3600, 24, "2:30.0")]
    [InlineData(3600, 18, "3:20.0")]
    [InlineData(3715, 24, "2:34.8")]
    [InlineData(3715, 18, "3:26.4")]
    public void A_Super_8_cartridge_lasts_as_many_frames_as_are_counted(long frames, int speed, string time) =>
        Assert.Equal(time, RunningTime.Text(new Footage(frames).Seconds(new Speed(speed)), 1));

    // Nominal beside true: 9.5 mm 40 and 40.42, 70 mm 12.8 and 12.834; 8 mm in a metre 262.5 and a dealer's 264.
    [Theory]
    [InlineData("9.5mm", 40, 40.42)]
    [InlineData("65mm", 12.8, 12.834)]
    public void A_nominal_count_says_that_it_is_nominal(string name, double nominal, double true_)
    {
        var gauge = Gauge.Named(name)!;

        Assert.Equal(nominal, gauge.FramesPerFoot.ToDouble());
        Assert.Equal(true_, gauge.TrueFramesPerFoot(PitchKind.LongPitch).ToDouble(), 0.005);
    }

    [Fact]
    public void Eight_millimetre_has_262_frames_and_a_half_in_a_metre() => Assert.Equal(262.5, Gauge.Film8.FramesPerMetre.ToDouble(), 0.05);

    // 400 ft by length of short-pitch stock hold about 16 032 frames, not 16 000.
    [Fact]
    public void Short_pitch_stock_holds_more_frames_than_its_feet_say() =>
        Assert.Equal(16_032, (400 * Gauge.Film16.TrueFramesPerFoot(PitchKind.ShortPitch)).ToDouble(), 0.5);

    // Incident constants from 224 to 340: 0.6 of a stop.
    [Fact]
    public void The_incident_constant_is_worth_up_to_six_tenths_of_a_stop()
    {
        double[] constants =
        [
            PublishedMeterConstants.CFlat,
            PublishedMeterConstants.C1971,
            340,
            PublishedMeterConstants.C1961,
            264.7,
            MeterConstants.CCine,
        ];
        var values = constants.Select(c => MeterLaw.IncidentEv(1000, 100, c)).ToArray();

        Assert.Equal(0.6, values.Max() - values.Min(), 2);
    }

    // Reflected constants of 12.5, 14 and 11.4: 0.16 of a stop from the first to the second.
    [Fact]
    public void The_reflected_constant_is_worth_a_sixth_of_a_stop() =>
        Assert.Equal(
            0.16,
            MeterLaw.ReflectedEv(1000, 100, MeterConstants.K) - MeterLaw.ReflectedEv(1000, 100, PublishedMeterConstants.KHigh),
            2
        );

    // Eastman Kodak's slides: ⅓; a meter's manual: ⅔. The table has the filter maker's; the other can be typed.
    [Fact]
    public void The_80D_is_tabled_by_its_maker_and_can_have_another_figure()
    {
        Assert.Equal(-1 / 3.0, LightFilter.Named("80D")!.Stops);
        Assert.Equal(-2 / 3.0, Exposure.Combine(new ExposureConditions { Filters = [new LightFilter("80D", -2 / 3.0, -56)] }).Total);
    }

    [Theory]
    [InlineData(10.26, 7.49)] // G11 M: from memory, SMPTE 7
    [InlineData(10.41, 7.47)] // G9 H: Wheeler (1953), p. 286
    [InlineData(10, 7.5)] // G10 H: C. E. K. Mees, Trans. SMPE 16 (1923)
    [InlineData(9.65, 7.21)] // G14 M: C. Wootton, the projected picture
    [InlineData(12.52, 7.41)] // G12 M: from memory, SMPTE 201M
    [InlineData(12.40, 7.49)] // G13 M: a newsgroup's list of questions (1998), 0.488 × 0.295 in
    [InlineData(12.35, 7.42)] // G13 M: a lexicon
    public void The_camera_aperture_is_an_input(decimal width, decimal height)
    {
        var view = FieldOfView.Of(25, new CameraAperture(width, height));

        Assert.Equal((double)width / 50, Math.Tan(view.Horizontal * Math.PI / 360), 9);
        Assert.Equal((double)height / 50, Math.Tan(view.Vertical * Math.PI / 360), 9);
    }

    // Hurbis-Cherrier prints 0.015 mm and 0.0006 in (0.01524 mm) in one line; Kodak and Samuelson 1/2000 and 1/1000 in.
    [Theory]
    [InlineData(0.015)]
    [InlineData(0.01524)]
    [InlineData(0.0127)]
    [InlineData(0.0254)]
    public void The_circle_of_confusion_is_an_input(double circle) =>
        Assert.Equal(25 * 25 / (4 * circle), DepthOfField.Of(25, 4, circle, 2000).Hyperfocal, 9);

    // 0.0053 in (implied), 0.0055 to 0.006 in (1935), base alone 0.0056 in (2008): a tenth of the film.
    [Theory]
    [InlineData(0.0053)]
    [InlineData(0.0055)]
    [InlineData(0.0056)]
    [InlineData(0.0060)]
    public void The_thickness_of_film_is_an_input(double inches) =>
        Assert.Equal(0.0060 / inches, new FilmRoll(50, inches * 25.4).LengthAt(90) / new FilmRoll(50, 0.0060 * 25.4).LengthAt(90), 9);

    // Camera manual 40 and 60 frames; laboratories 24 and 48 (F3 M), or 16 to 96.
    [Theory]
    [InlineData(24)]
    [InlineData(40)]
    [InlineData(48)]
    [InlineData(60)]
    [InlineData(96)]
    public void A_dissolve_is_as_long_as_is_asked(long frames) => Assert.Equal(0, Passes.DissolveLevel(frames, 0));

    // Densities and factors in thirds and by logarithm: up to 0.08 of a stop for a factor of 3 or 6.
    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    public void Thirds_and_logarithms_differ_by_less_than_a_tenth(double factor) =>
        Assert.InRange(Math.Abs(Stops.ToThird(Stops.FromFactor(factor)) - Stops.FromFactor(factor)), 0.07, 0.09);

    // A hobby table's 64 000 lx for EV 15 implies C of about 195; 250 makes 81 920 lx.
    [Fact]
    public void A_table_of_lux_gives_its_constant_away()
    {
        Assert.Equal(64_000, MeterLaw.LuxFor(15, 100, 195.3), 10.0);
        Assert.Equal(81_920, MeterLaw.LuxFor(15, 100, 250), 6);
    }

    // A fifth (1965) or a quarter to the finder: 0.32 or 0.42 of a stop.
    [Theory]
    [InlineData(20, -0.32)]
    [InlineData(25, -0.42)]
    public void What_the_finder_takes_is_an_input(int percent, double stops) =>
        Assert.Equal(stops, Exposure.Combine(new ExposureConditions { FinderLoss = new Ratio(percent, 100) }).Total, 0.005);
}
