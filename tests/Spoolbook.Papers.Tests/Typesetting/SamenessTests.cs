using Spoolbook.Papers.Tests.Pages;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Tests.Typesetting;

public class SamenessTests
{
    const string Article =
        "<article><h1>R03</h1><table><thead><tr><th>Scene</th></tr></thead><tbody><tr><td>Ελ їє "
            + "7/B</td></tr></tbody></table><figure><svg viewBox=\"0 0 10 10\"><title>t</title><rect x=\"1\" y=\"1\" width=\"5\" "
            + "height=\"5\"/></svg></figure></article>";

    [Fact]
    public void The_same_page_is_the_same_file()
    {
        Assert.Equal(Print(Printed.Meta), Print(Printed.Meta));
    }

    [Fact]
    public void The_date_of_making_comes_from_outside_and_changes_only_with_it()
    {
        Assert.NotEqual(Print(Printed.Meta), Print(Printed.Meta with { Made = Printed.Meta.Made.AddHours(1) }));
        Assert.Equal(Print(Printed.Meta), Print(Printed.Meta with { Made = Printed.Meta.Made.ToOffset(TimeSpan.Zero) }));
    }

    [Fact]
    public void Many_papers_at_once_are_the_same_as_one_after_another()
    {
        var alone = Print(Printed.Meta);
        var together = new byte[16][];
        Parallel.For(0, together.Length, new ParallelOptions { MaxDegreeOfParallelism = 4 }, i => together[i] = Print(Printed.Meta));
        Assert.All(together, bytes => Assert.Equal(alone, bytes));
    }

    static byte[] Print(PdfMeta meta) => PdfRenderer.Render(Templates.Page(Article), new PageSetup(Paper.A4), meta).Bytes;
}
