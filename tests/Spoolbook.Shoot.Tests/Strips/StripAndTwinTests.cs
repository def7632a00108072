using CsCheck;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Tests.Strips;

public class StripAndTwinTests
{
    [Fact]
    public void Strip_and_twin_agree_frame_by_frame() => AnyRoll.Sheet.Sample(AssertAgree, iter: 10_000);

    [Fact]
    public void Accounts_add_up_to_what_was_loaded() =>
        AnyRoll.Sheet.Sample(sheet => sheet.Tally().Loaded == sheet.Roll.Length!.Value, iter: 1_000);

    internal static void AssertAgree(Sheet sheet)
    {
        var strip = sheet.Strip();
        var twin = new NaiveTwin(sheet.Roll, strip.Loaded.Frames);

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
