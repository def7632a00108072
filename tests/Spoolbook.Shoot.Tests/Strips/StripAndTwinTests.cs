using CsCheck;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Tests.Strips;

public class StripAndTwinTests
{
    [Fact]
    public void Strip_and_twin_agree_frame_by_frame() => AnyRoll.Sheet.Sample(AssertAgree, iter: 100 * Check.Iter);

    [Fact]
    public void Accounts_add_up_to_what_was_loaded() =>
        AnyRoll.Sheet.Sample(sheet => sheet.Tally().Loaded == sheet.Roll.Length!.Value, iter: 10 * Check.Iter);

    // Children of short ends with their parents' film, re-cans, practice rolls, and rolls that come from nowhere.
    [Fact]
    public void Each_roll_of_a_shoot_agrees_with_its_twin_whatever_it_was_cut_from() =>
        AnyShoot.Production.Sample(
            production =>
            {
                foreach (var book in BookKeeper.Keep(production).Rolls)
                {
                    var name = book.Roll.Name.Value;
                    var isMentioned =
                        production.Rolls.Any(r => r.ShortEndOf?.Value == name) || production.StockLog.Any(e => e.ShortEndOf?.Value == name);
                    AssertAgree(book.Roll, book.Strip, isMentioned);
                }
            },
            iter: 7 * Check.Iter + Check.Iter / 2
        );

    [Fact]
    public void The_generator_makes_nights_run_offs_on_the_spring_children_of_short_ends_and_re_cans()
    {
        var (nights, runOffs, children, recans) = (0, 0, 0, 0);
        AnyShoot.Production.Sample(
            production =>
            {
                foreach (var book in BookKeeper.Keep(production).Rolls)
                {
                    nights += book.Walk.Moments.Count(m => m.When is { } when && DateOnly.FromDateTime(when) > m.Day);
                    runOffs += book.Walk.Moments.Count(m => m.Entry is RunOff && m.After.Driven > m.Before.Driven);
                    children += book.Roll.ShortEndOf is { } parent && production.RollNamed(parent.Value) is { Unload: not null } ? 1 : 0;
                    recans += book.Roll.Unload is not null && !book.Roll.Takes.Any() ? 1 : 0;
                }
            },
            iter: 300,
            threads: 1
        );

        Assert.All([nights, runOffs, children, recans], count => Assert.True(count > 20, $"{nights} {runOffs} {children} {recans}"));
    }

    internal static void AssertAgree(Sheet sheet) => AssertAgree(sheet.Roll, sheet.Strip());

    static void AssertAgree(Roll roll, Strip strip, bool isMentioned = false)
    {
        var twin = new NaiveTwin(roll, strip.Loaded.Frames, isMentioned);

        Assert.Equal(twin.Passes, strip.Passes);
        Assert.Equal(twin.Days, strip.Walk.Moments.Select(m => m.Day));
        Assert.Equal(twin.Driven, strip.Walk.Moments.Select(m => m.After.Driven.Frames));
        Assert.Equal(strip.Loaded, strip.Segments[^1].Span.To);
        var frame = 0;
        foreach (var segment in strip.Segments)
        {
            Assert.Equal(frame, segment.Span.From.Frames);
            Assert.False(segment.Span.IsEmpty);
            AssertSameExposure(twin, strip, segment.Span);
            for (; frame < segment.Span.To.Frames; frame++)
            {
                Assert.Equal(twin.Boxes[frame].Falls(), (segment.Account, segment.Cause));
                Assert.Equal(twin.Boxes[frame].Day(), segment.Custody.On);
                Assert.Equal(
                    twin.Boxes[frame].Takes.Select(t => (t.Take.Slate, t.Pass)),
                    segment.Layers.Select(l => (l.Take.Slate, l.Pass))
                );
            }
        }
    }

    static void AssertSameExposure(NaiveTwin twin, Strip strip, Span span)
    {
        var runs = Composite.Over(strip, span).ToList();
        Assert.Equal(span, new Span(runs[0].Span.From, runs[^1].Span.To));
        foreach (var run in runs)
        {
            for (var frame = run.Span.From.Frames; frame < run.Span.To.Frames; frame++)
            {
                var light = twin.Boxes[(int)frame].Light;
                if (light == 0)
                {
                    Assert.Equal(double.NegativeInfinity, run.Stops);
                }
                else
                {
                    Assert.Equal(Math.Log2(light), run.Stops, 1e-9);
                }
            }
        }
    }
}
