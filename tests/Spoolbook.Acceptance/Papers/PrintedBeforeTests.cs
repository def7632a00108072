using Spoolbook.Papers;
using Spoolbook.Printing;

namespace Spoolbook.Acceptance.Papers;

/// <summary>Whoever makes papers again and again sets only those that say something else.</summary>
public sealed class PrintedBeforeTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void After_a_corrected_remark_the_other_rolls_papers_are_not_set_again_and_all_come_out_as_if_they_were()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var before = new PrintedBefore();
        Make(production, "again", before);
        Assert.Equal(0, before.Spared);

        var roll = Path.Combine(production, "rolls", "r01.yaml");
        File.WriteAllText(roll, File.ReadAllText(roll).Replace("Dog in shot", "Cat in shot", StringComparison.Ordinal));
        Make(production, "again", before);
        Make(production, "once", null);

        // The reports of the other rolls at least.
        Assert.InRange(before.Spared, Directory.GetFiles(Path.Combine(production, "rolls")).Length - 1, int.MaxValue);
        Assert.Equal(Bench.Bytes(_bench.PathOf("once")), Bench.Bytes(_bench.PathOf("again")));
    }

    [Fact]
    public void On_the_next_day_every_paper_is_set_again()
    {
        var before = new PrintedBefore();
        Make(Repository.Sample, "papers", before);
        Make(Repository.Sample, "papers", before, days: 1);
        Assert.Equal(0, before.Spared);
    }

    void Make(string production, string to, PrintedBefore? before, int days = 0)
    {
        using var output = new StringWriter();
        var around = new CommandEnvironment(output, output, _bench.Folder, Workbench.Made.AddDays(days), Colour: false, Width: 100);
        var making = new Making(production, _bench.PathOf(to), null, Draft: false, FindingFormat.Text) { Before = before };
        Assert.NotNull(making.Make(around).Written);
    }
}
