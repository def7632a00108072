using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Strips;

/// <summary>Effects with the arithmetic written out. A foot is 40 frames; half a stop is a factor of 1.414.</summary>
public class EffectTests
{
    // Take A ends at 10+00 = frame 400 and closes over 48 frames, from 352. Wound back to 352, take B opens over 352-400.
    // Frame 352 + i: A is open (47 1/2 - i)/48, B is open (i + 1/2)/48; together 48/48 = 1, and log2 1 = 0 stops.
    [Fact]
    public void A_dissolve_of_48_frames_that_is_aligned_stays_level()
    {
        var sheet = LawTests.DissolveSheet(48, 0);
        var dissolve = Assert.Single(sheet.Book().Effects);

        Assert.Equal(EffectKind.Dissolve, dissolve.Kind);
        Assert.Equal(new Span(Frames(352), Frames(400)), dissolve.Span);
        Assert.Equal(["1A/1", "1B/1"], dissolve.Layers.Select(l => l.Take.Slate));
        Assert.Equal(0, dissolve.Offset.Frames);
        Assert.Equal(0, dissolve.Worst, 1e-9);
        Assert.Equal(0, dissolve.Mean, 1e-9);
        Assert.Equal(0, Composite.At(sheet.Strip(), Frames(376)), 1e-9);
    }

    // B opens at 346: six frames early. From 352 to 393 both shutters move:
    // A (47 1/2 - i)/48 + B (i + 6 + 1/2)/48 = 54/48 = 1.125, and log2 1.125 = +0.1699 stops.
    // Before that A is open and B rises to (5 + 1/2)/48: 53.5/48, less. After it B is open and A falls from (5 + 1/2)/48.
    [Fact]
    public void Six_frames_early_the_dissolve_bumps_by_a_sixth_of_a_stop()
    {
        var dissolve = Assert.Single(LawTests.DissolveSheet(48, -6).Book().Effects);

        Assert.Equal(-6, dissolve.Offset.Frames);
        Assert.Equal(new Span(Frames(346), Frames(400)), dissolve.Span);
        Assert.Equal(0.1699, dissolve.Worst, 4);
    }

    // B opens at 358: six frames late. From 358 to 400: A (47 1/2 - i)/48 + B (i - 6 + 1/2)/48 = 42/48 = 0.875,
    // and log2 0.875 = -0.1926 stops. The frames on either side fall from 47.5/48 to 42.5/48 and rise again:
    // the mean over all 54 frames is (42 * log2(42/48) + 2 * (log2(47.5/48) + log2(46.5/48) + ... + log2(42.5/48))) / 54
    // = (42 * -0.192645 + 2 * (-0.015107 - 0.045803 - 0.077155 - 0.109203 - 0.141980 - 0.175520)) / 54
    // = (-8.091090 - 1.129536) / 54 = -0.1708.
    [Fact]
    public void Six_frames_late_the_dissolve_dips_by_a_fifth_of_a_stop()
    {
        var dissolve = Assert.Single(LawTests.DissolveSheet(48, 6).Book().Effects);

        Assert.Equal(6, dissolve.Offset.Frames);
        Assert.Equal(new Span(Frames(352), Frames(406)), dissolve.Span);
        Assert.Equal(-0.1926, dissolve.Worst, 4);
        Assert.Equal(-0.1926, dissolve.Dip, 4);
        Assert.Equal(-0.1708, dissolve.Mean, 4);
    }

    // Both halves a stop under: half the light all through, log2 1/2 = -1. The shutters are level.
    [Fact]
    public void A_dissolve_counts_what_its_takes_were_exposed()
    {
        var sheet = Of(At(20))
            .Take("1A/1", to: Frames(400), fadeOut: Frames(48), exposed: -1)
            .Rewind(Frames(352))
            .Take("1B/1", to: Frames(600), fadeIn: Frames(48), exposed: -1);
        var dissolve = Assert.Single(sheet.Book().Effects);

        Assert.Equal((-1, -1), (Math.Round(dissolve.Worst, 9), Math.Round(dissolve.Mean, 9)));
        Assert.Equal(Composite.At(sheet.Strip(), Frames(376)), dissolve.Worst, 1e-9);
        Assert.Equal(0, dissolve.Dip, 1e-9);
    }

    // 2^-1 + 2^-1 = 1, and log2 1 = 0.
    [Fact]
    public void A_double_exposure_at_one_stop_under_twice_is_normal()
    {
        var sheet = Of(At(20)).Take("2A/1", to: At(10), exposed: -1).Rewind(At(0)).Take("2B/1", to: At(10), exposed: -1);
        var effect = Assert.Single(sheet.Book().Effects);

        Assert.Equal(EffectKind.Superimposition, effect.Kind);
        Assert.Equal(new Span(At(0), At(10)), effect.Span);
        Assert.Equal(0, effect.Worst, 1e-9);
        Assert.Equal(0, effect.Mean, 1e-9);
        Assert.Equal(0, effect.BurntOut.Frames);
        Assert.Equal(0, Composite.At(sheet.Strip(), At(3, 7)), 1e-9);
    }

    // 2^-1.6 = 0.32988, three times 0.98963; log2 0.98963 = -0.0150. Three equal passes want log2 3 = 1.585 stops;
    // 1 3/5 is as near as tenths come.
    [Fact]
    public void A_triple_exposure_at_one_and_three_fifths_under_is_normal_to_a_hundredth_and_a_half()
    {
        var sheet = Of(At(20))
            .Take("2A/1", to: At(10), exposed: -1.6)
            .Rewind(At(0))
            .Take("2B/1", to: At(10), exposed: -1.6)
            .Rewind(At(0))
            .Take("2C/1", to: At(10), exposed: -1.6);
        var effect = Assert.Single(sheet.Book().Effects);

        Assert.Equal(3, effect.Layers.Length);
        Assert.Equal([1, 2, 3], effect.Layers.Select(l => l.Pass));
        Assert.Equal(-0.0150, effect.Worst, 4);
    }

    // 2^0 + 2^0 = 2: one stop over, on the 3+00 = 120 frames where take B started before take A had ended.
    [Fact]
    public void Two_full_exposures_burn_out_the_frames_that_they_share()
    {
        var effect = Assert.Single(Of(At(20)).Take("2A/1", to: At(10)).Rewind(At(7)).Take("2B/1", to: At(15)).Book().Effects);

        Assert.Equal(1, effect.Worst, 1e-9);
        Assert.Equal(120, effect.BurntOut.Frames);
    }

    // Both at a stop under, together normal, until A closes over its last 2+00 = 80 frames: frame i of them has
    // 1/2 + 1/2 (79 1/2 - i)/80 of the light. The last has 1/2 + 1/320: log2 0.503125 = -0.9910. The mean over all 400 frames counts
    // 320 level ones and those 80.
    [Fact]
    public void The_mean_of_a_double_exposure_counts_each_frame_once()
    {
        var effects = Of(At(20))
            .Take("2A/1", to: At(10), fadeOut: Frames(80), exposed: -1)
            .Rewind(At(0))
            .Take("2B/1", to: At(10), exposed: -1)
            .Book()
            .Effects;
        var effect = effects.Single(e => e.Kind == EffectKind.Superimposition);

        Assert.Equal(-0.9910, effect.Worst, 4);
        Assert.Equal(Enumerable.Range(0, 80).Sum(i => Math.Log2(0.5 + (0.5 * (79.5 - i) / 80))) / 400, effect.Mean, 9);
    }

    // 2^0 + 2^-1 = 1.5: over, and still only one of them at full exposure.
    [Fact]
    public void One_full_exposure_under_a_fainter_one_burns_nothing_out() =>
        Assert.Equal(
            0,
            Assert
                .Single(Of(At(20)).Take("2A/1", to: At(10)).Rewind(At(0)).Take("2B/1", to: At(10), exposed: -1).Book().Effects)
                .BurntOut.Frames
        );

    // A title at one stop under over the last 2+00 of a dissolve's outgoing take and beyond its end.
    [Fact]
    public void A_title_over_a_dissolve_is_listed_beside_it()
    {
        var effects = LawTests.DissolveSheet(40, 0).Rewind(At(8)).Take("9A/1", to: At(12), exposed: -1).Book().Effects;

        Assert.Equal(
            [(EffectKind.Superimposition, 8), (EffectKind.Dissolve, 9), (EffectKind.Superimposition, 9), (EffectKind.Superimposition, 10)],
            effects.Select(e => (e.Kind, (int)e.Span.From.Frames / 40))
        );
    }

    [Fact]
    public void A_fade_with_nothing_over_it_is_a_fade_to_black()
    {
        var effects = Of(At(20)).Take("3A/1", to: At(10), fadeIn: Frames(24), fadeOut: Frames(48)).Book().Effects;

        Assert.Equal(
            [(EffectKind.FadeIn, new Span(Frames(0), Frames(24))), (EffectKind.FadeOut, new Span(Frames(352), Frames(400)))],
            effects.Select(e => (e.Kind, e.Span))
        );
    }

    [Fact]
    public void A_take_cranked_by_hand_is_an_effect_all_along_it_and_one_on_the_spring_is_none()
    {
        var effects = Of(At(20))
            .Take("3A/1", to: At(5))
            .Take("3A/2", to: At(10), also: t => t with { HandCranked = Written(true) })
            .Book()
            .Effects;

        var effect = Assert.Single(effects);
        Assert.Equal((EffectKind.HandCranked, new Span(At(5), At(10)), "3A/2"), (effect.Kind, effect.Span, effect.Layers[0].Take.Slate));
    }

    [Fact]
    public void Fades_that_do_not_meet_are_no_dissolve()
    {
        var effects = Of(At(20)).Take("3A/1", to: At(10), fadeOut: Frames(48)).Take("3B/1", to: At(15), fadeIn: Frames(48)).Book().Effects;

        Assert.Equal([EffectKind.FadeOut, EffectKind.FadeIn], effects.Select(e => e.Kind));
    }

    // The shutter had half closed when the film ran out: frames 352-376 of the fade are on the roll, the rest is not.
    [Fact]
    public void A_fade_cut_off_by_the_end_of_the_roll_ends_half_closed()
    {
        var strip = Of(Frames(376)).Take("3A/1", to: At(10), fadeOut: Frames(48)).Strip();

        // The last frame on the roll is the 24th of 48: (48 - 23 - 1/2)/48 = 24.5/48, and log2 of it is -0.9703.
        Assert.Equal(-0.9703, Composite.At(strip, Frames(375)), 4);
        Assert.Equal(ContradictionKind.BeyondEnd, Assert.Single(strip.Contradictions).Kind);
    }
}
