using CsCheck;
using Spoolbook.Shoot.Tests.Sheets;

namespace Spoolbook.Shoot.Tests.Strips;

public class StripAndTwinTests
{
    [Fact]
    public void Strip_and_twin_agree_frame_by_frame() => AnyRoll.Sheet.Sample(AssertAgree, iter: 10_000);

    [Fact]
    public void Accounts_add_up_to_what_was_loaded() =>
        AnyRoll.Sheet.Sample(sheet => sheet.Tally().Loaded == sheet.Roll.Length!.Value, iter: 2_000);

    internal static void AssertAgree(Sheet sheet)
    {
        var strip = sheet.Strip();
        var twin = new NaiveTwin(sheet.Roll, strip.Loaded.Frames);

        Assert.Equal(twin.Passes, strip.Passes);
        Assert.Equal(strip.Loaded, strip.Segments[^1].Span.To);
        var frame = 0;
        foreach (var segment in strip.Segments)
        {
            Assert.Equal(frame, segment.Span.From.Frames);
            Assert.False(segment.Span.IsEmpty);
            for (; frame < segment.Span.To.Frames; frame++)
            {
                Assert.Equal(twin.Boxes[frame].Falls(), (segment.Account, segment.Cause));
                Assert.Equal(twin.Boxes[frame].Takes.Select(t => (t.Take.Slate, t.Pass)), segment.Layers.Select(l => (l.Take.Slate, l.Pass)));
            }
        }
    }
}
