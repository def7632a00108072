namespace Spoolbook.Film.Tests;

public class GaugeTests
{
    [Theory]
    [InlineData("16mm", 40, 1)] // A1 H: Metcalfe and Christensen 1938; C. Gale, Making Better Movies, p. 15
    [InlineData("8mm", 80, 1)] // A2 H: Gale, p. 15
    [InlineData("Super 8", 72, 1)] // A3 H: encyclopaedia; SMPTE 200M-2003
    [InlineData("9.5mm", 40, 1)] // A4 M: encyclopaedia; by its step it is 40.42
    [InlineData("35mm", 16, 1)] // A5 H: J. H. Battison, Movies for TV, p. 5
    [InlineData("35mm 3-perf", 64, 3)] // A8 H: computed from 64 perforations a foot
    [InlineData("35mm 2-perf", 32, 1)] // computed from 64 perforations a foot
    [InlineData("65mm", 64, 5)] // A9 H: encyclopaedia, 64 frames in 5 ft
    [InlineData("Super 16", 40, 1)] // the film of 16 mm
    public void A_gauge_has_so_many_frames_a_foot(string name, int frames, int feet) =>
        Assert.Equal(new Ratio(frames, feet), Gauge.Named(name)!.FramesPerFoot);

    // A6 H: encyclopaedia, 64 perforations to a foot of 35 mm. A23 H: 16 frames are 64 perforations and 1 ft.
    [Fact]
    public void Every_35mm_frame_is_a_part_of_sixty_four_perforations_a_foot()
    {
        foreach (var gauge in new[] { Gauge.Film35, Gauge.Film35Perf3, Gauge.Film35Perf2 })
        {
            Assert.Equal(64, gauge.FramesPerFoot * gauge.Pitch.PerforationsPerFrame);
        }
    }

    // A23 H: encyclopaedia, edge numbers: 20 frames of 16 mm are 6 in.
    [Fact]
    public void Twenty_16mm_frames_are_half_a_foot() => Assert.Equal(new Ratio(1, 2), new Footage(20).Feet(Gauge.Film16));

    [Theory]
    [InlineData("16mm", PitchKind.ShortPitch, 0.2994, 7.605)] // A10 H: SMPTE, 35-mm film with 16-mm perforations
    [InlineData("16mm", PitchKind.LongPitch, 0.3000, 7.620)] // A10, A11 H: the same; Z22.5-1947
    [InlineData("Super 16", PitchKind.ShortPitch, 0.2994, 7.605)] // A10 H
    [InlineData("Super 8", PitchKind.LongPitch, 0.1667, 4.234)] // A14 H: SMPTE 149-2004, table 1
    [InlineData("Super 8", PitchKind.ShortPitch, 0.1664, 4.227)] // A14 H: SMPTE 149-2004
    [InlineData("8mm", PitchKind.LongPitch, 0.1500, 3.810)] // A15 H: SMPTE 239-2004
    [InlineData("8mm", PitchKind.ShortPitch, 0.1497, 3.802)] // A15 H: SMPTE 239-2004
    [InlineData("35mm", PitchKind.ShortPitch, 0.1866, 4.740)] // A18 H: encyclopaedia, BH
    [InlineData("35mm", PitchKind.LongPitch, 0.1870, 4.750)] // A18 H: encyclopaedia, KS
    [InlineData("65mm", PitchKind.LongPitch, 0.1870, 4.750)] // A19 H: SMPTE 119:2011
    [InlineData("9.5mm", PitchKind.LongPitch, 0.2969, 7.540)] // A16 M: encyclopaedia, in millimetres
    public void A_pitch_agrees_with_its_standard_in_inches_and_millimetres(string name, PitchKind stock, double inches, double millimetres)
    {
        var pitch = Gauge.Named(name)!.Pitch.Of(stock).ToDouble();

        Assert.Equal(inches, pitch / 25.4, 4);
        Assert.Equal(millimetres, pitch, 0.001);
    }

    [Theory]
    [InlineData("16mm", PitchKind.LongPitch, 30.00, 762.00)] // A12 H: Z22.5-1947
    [InlineData("Super 8", PitchKind.LongPitch, 16.670, 423.42)] // A14b H: SMPTE 149-2004
    [InlineData("Super 8", PitchKind.ShortPitch, 16.640, 422.66)] // A14b H: SMPTE 149-2004
    public void A_hundred_pitches_are_as_the_standard_prints_them(string name, PitchKind stock, double inches, double millimetres)
    {
        var hundred = new Footage(100).TrueMillimetres(Gauge.Named(name)!, stock).ToDouble();

        Assert.Equal(inches, hundred / 25.4, 3);
        Assert.Equal(millimetres, hundred, 0.006);
    }

    [Theory]
    [InlineData("35mm", 19.000)] // A17 H: encyclopaedia, film steps (ISO 23, ISO 491), as in the rows below
    [InlineData("16mm", 7.620)] // A17 H
    [InlineData("8mm", 3.810)] // A17 H
    [InlineData("Super 8", 4.233)] // A17 H, 1/6 in there, 0.1667 in with SMPTE
    [InlineData("65mm", 23.750)] // A17 H
    [InlineData("9.5mm", 7.540)] // A16 M
    public void A_frame_step_is_perforations_times_pitch(string name, double millimetres) =>
        Assert.Equal(millimetres, Gauge.Named(name)!.Pitch.FrameStep(PitchKind.LongPitch).ToDouble(), 0.0015);

    // A20 H: encyclopaedia, "about 2 per mille"; 0.9980 computed.
    [Theory]
    [InlineData("16mm", 0.9980)]
    [InlineData("8mm", 0.9980)]
    [InlineData("35mm", 0.9979)]
    public void Short_pitch_is_about_two_per_mille_less(string name, double share)
    {
        var pitch = Gauge.Named(name)!.Pitch;

        Assert.Equal(share, (pitch.ShortPitch / pitch.LongPitch).ToDouble(), 4);
    }

    // A21 H: computed from A10. A4, A9: computed beside the nominal count.
    [Theory]
    [InlineData("16mm", PitchKind.ShortPitch, 40.080)]
    [InlineData("16mm", PitchKind.LongPitch, 40.000)]
    [InlineData("9.5mm", PitchKind.LongPitch, 40.424)]
    [InlineData("65mm", PitchKind.LongPitch, 12.834)]
    public void The_true_count_of_frames_is_beside_the_nominal_one(string name, PitchKind stock, double framesPerFoot) =>
        Assert.Equal(framesPerFoot, Gauge.Named(name)!.TrueFramesPerFoot(stock).ToDouble(), 3);

    [Theory]
    [InlineData("16mm", 15.95, 0.628)] // A13 H: SMPTE 101-2003; Z22.5-1947 has 15.98 ± 0.03, 0.629 ± 0.001 in
    [InlineData("Super 16", 15.95, 0.628)] // A13 H: the film of 16 mm
    [InlineData("35mm", 34.975, 1.377)] // from memory, as are the rows below
    [InlineData("65mm", 64.97, 2.558)]
    [InlineData("Super 8", 7.975, 0.314)]
    [InlineData("8mm", 7.975, 0.314)]
    [InlineData("9.5mm", 9.5, 0.374)]
    public void Film_is_as_wide_as_its_standard_says(string name, double millimetres, double inches)
    {
        var width = Gauge.Named(name)!.Width.ToDouble();

        Assert.Equal(millimetres, width, 9);
        Assert.Equal(inches, width / 25.4, 3);
    }

    // A13 H: Z22.5-1947.
    [Fact]
    public void The_modern_width_of_16mm_is_within_what_1947_allowed() =>
        Assert.InRange(decimal.Parse(Gauge.Film16.Width.ToShortText(3), System.Globalization.CultureInfo.InvariantCulture), 15.95m, 16.01m);

    [Theory]
    [InlineData("16mm", 10.26, 7.49)] // G11 M: from memory, SMPTE 7
    [InlineData("Super 16", 12.52, 7.41)] // G12 M: from memory, SMPTE 201M-1996
    [InlineData("8mm", 4.80, 3.51)] // G15 H: L. J. Wheeler, Principles of Cinematography, p. 286
    [InlineData("9.5mm", 8.5, 6.5)] // G15 H: Wheeler, p. 286
    [InlineData("35mm", 24.89, 18.67)] // P. Wheeler, Practical Cinematography, 2nd ed., ch. 20: 0.980 × 0.735 in
    public void A_camera_exposes_so_much_of_the_film(string name, decimal width, decimal height) =>
        Assert.Equal(new CameraAperture(width, height), Gauge.Named(name)!.Aperture);

    [Theory]
    [InlineData("16mm", 1.33, 1.37)] // G17 H: D. Case, Film Technology in Post Production, p. 36
    [InlineData("Super 16", 1.66, 1.69)] // G17 H: 1.66 is shown, of what the camera exposes
    public void A_picture_has_the_shape_that_its_gauge_is_known_for(string name, double least, double most) =>
        Assert.InRange(Gauge.Named(name)!.Aperture.Aspect, least, most + 0.005);

    [Theory]
    [InlineData("16mm", 0.015)] // G5 H: M. Hurbis-Cherrier, Voice and Vision, app. 6
    [InlineData("35mm", 0.0254)] // G4 H: Kodak's reference guide, p. 70, offers 1/1000 in
    [InlineData("Super 8", 0.0127)] // G4 H: and 1/2000 in
    [InlineData("65mm", 0.0508)] // G4 H: and 1/500 in
    public void A_gauge_has_a_usual_circle_of_confusion(string name, double millimetres) =>
        Assert.Equal(millimetres, Gauge.Named(name)!.CircleOfConfusion);

    [Theory]
    [InlineData("16", "16mm")]
    [InlineData("16 MM", "16mm")]
    [InlineData("regular 8", "8mm")]
    [InlineData("r8", "8mm")]
    [InlineData("S8", "Super 8")]
    [InlineData("super-8", "Super 8")]
    [InlineData("Super 16mm", "Super 16")]
    [InlineData("s16", "Super 16")]
    [InlineData("9.5", "9.5mm")]
    [InlineData("35mm 4-perf", "35mm")]
    [InlineData("3-perf", "35mm 3-perf")]
    [InlineData("35mm 2 perf", "35mm 2-perf")]
    [InlineData("70mm", "65mm")]
    [InlineData("65/70", "65mm")]
    [InlineData("5-perf", "65mm")]
    public void A_gauge_answers_to_the_trades_names(string written, string name) => Assert.Equal(name, Gauge.Named(written)?.ToString());

    [Theory]
    [InlineData("")]
    [InlineData("17.5mm")]
    [InlineData("mm")]
    public void A_name_that_no_gauge_has_is_none(string written) => Assert.Null(Gauge.Named(written));

    [Fact]
    public void Every_gauge_answers_to_its_own_name_and_16mm_is_the_default()
    {
        Assert.Equal(9, Gauge.All.Count);
        Assert.All(Gauge.All, gauge => Assert.Same(gauge, Gauge.Named(gauge.Name)));
        Assert.Same(Gauge.Film16, Gauge.Default);
        Assert.Same(Gauge.Film8, Gauge.Named("8mm"));
        Assert.Same(Gauge.Super8, Gauge.Named("Super 8"));
        Assert.Same(Gauge.Film9, Gauge.Named("9.5mm"));
        Assert.Same(Gauge.Super16, Gauge.Named("Super 16"));
        Assert.Same(Gauge.Film65, Gauge.Named("65mm"));
    }
}
