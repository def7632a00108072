using CsCheck;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Walks;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Strips;

public class LawTests
{
    static readonly Gen<(int Fade, int Offset)> FadeAndOffset =
        from fade in Gen.Int[2, 96]
        from offset in Gen.Int[-fade + 1, fade - 1]
        select (fade, offset);

    // Rewound to the head with the shutter closed, and run capped to where the film was, at the end of the log.
    [Fact]
    public void A_pass_in_the_dark_changes_nothing() =>
        AnyRoll
            .Sheet.Where(s => s.Strip().Stand.Frames >= 0)
            .Sample(
                sheet =>
                {
                    var before = sheet.Strip();
                    var zero = before.Moves.IsEmpty ? Frames(0) : before.Moves[^1].ZeroMoved;
                    var after = sheet.Rewind(Frames(0) - zero).RunOff(before.Stand - zero).Strip();

                    Assert.Equal(before.Segments.Select(Report), after.Segments.Select(Report));
                    Assert.Equal(before.Left, after.Left);
                    Assert.Equal(Runs(before), Runs(after));
                },
                iter: 10 * Check.Iter
            );

    [Fact]
    public void Splitting_a_take_at_any_frame_changes_no_account()
    {
        var split = from sheet in AnyRoll.Sheet from which in Gen.Int[0, 11] from part in Gen.Double[0, 1] select (sheet, which, part);
        split.Sample(
            s =>
            {
                var strip = s.sheet.Strip();
                if (strip.Layers.IsEmpty)
                {
                    return;
                }

                Assert.Equal(s.sheet.Tally(), Split(s.sheet, strip, s.which % strip.Layers.Length, s.part).Tally());
            },
            iter: 10 * Check.Iter
        );
    }

    [Fact]
    public void Shares_add_up_to_the_total_split_up_by_anything()
    {
        var shared = from sheets in AnyRoll.Sheet.Array[1, 3] from sharing in Gen.Enum<Accounts.Sharing>() select (sheets, sharing);
        shared.Sample(
            s =>
            {
                var book = Accounts.BookKeeper.Keep(SmallProduction.Of(s.sheets));
                Assert.Equal(book.Total, book.By(s.sharing).Aggregate(Accounts.Tally.Empty, (sum, share) => sum + share.Tally));
            },
            iter: 10 * Check.Iter
        );
    }

    [Fact]
    public void A_dissolve_with_offset_nought_is_level() =>
        Gen.Int[1, 96]
            .Sample(fade =>
            {
                var effect = Assert.Single(DissolveSheet(fade, 0).Book().Effects);
                Assert.Equal(0, effect.Worst, 1e-9);
                Assert.Equal(0, effect.Mean, 1e-9);
            });

    // Where both fades are under way the openings add up to 1 - k/n: log2 of it is the dip of a pass that starts
    // k frames late, or the bump of one that starts early. Where they hardly meet, the frame before the second
    // fade is as dark or darker: its opening is 1 - (k - 1/2)/n on one side and (n - k + 1/2)/n on the other,
    // which is never less than 1 - k/n.
    [Fact]
    public void Moving_a_dissolve_by_k_frames_gives_the_dip_or_bump_of_the_closed_formula() =>
        FadeAndOffset.Sample(d =>
        {
            var effect = Assert.Single(DissolveSheet(d.Fade, d.Offset).Book().Effects);
            Assert.Equal(EffectKind.Dissolve, effect.Kind);
            Assert.Equal(d.Offset, effect.Offset.Frames);
            Assert.Equal(Math.Log2(1 - ((double)d.Offset / d.Fade)), effect.Worst, 1e-9);
        });

    internal static Sheet DissolveSheet(int fade, int offset) =>
        Of(At(20))
            .Take("1A/1", to: At(10), fadeOut: Frames(fade))
            .Rewind(At(10) - Frames(fade) + Frames(offset))
            .Take("1B/1", to: At(15), fadeIn: Frames(fade));

    static (Span Span, Account Account, WasteCause? Cause, Custody Custody) Report(Segment s) => (s.Span, s.Account, s.Cause, s.Custody);

    static IEnumerable<ExposureRun> Runs(Strip strip) => Composite.Over(strip, new Span(Frames(0), strip.Loaded));

    static Sheet Split(Sheet sheet, Strip strip, int which, double part)
    {
        var layer = strip.Layers[which];
        var move = strip.Moves.Where(m => m.Entry is Take).ElementAt(which);
        var at = layer.Written.From + Frames((long)(layer.Written.Length.Frames * part)) - move.ZeroMoved;
        var first = layer.Take with { To = Written(at), FadeOut = null };
        var second = layer.Take with { From = null, FadeIn = null };
        var line = strip.Moves.IndexOf(move);
        return new Sheet(sheet.Roll with { Log = sheet.Roll.Log.SetItem(line, first).Insert(line + 1, second) });
    }
}
