using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Sheets;

namespace Spoolbook.Reading.Tests.Equal;

/// <summary>Other ways to write the sample, which must not change what it says.</summary>
public sealed partial class SameProductionTests
{
    static readonly ImmutableArray<(string Name, string Text)> _sample = Sample();

    static readonly string _values = Values(Beside(TextFiles.Of([.. _sample])));

    [Fact]
    public void Block_style_reads_the_same() => AssertSame(YamlStyle.Block);

    [Fact]
    public void Flow_style_reads_the_same() => AssertSame(YamlStyle.Flow);

    [Fact]
    public void Double_quotes_say_the_same() => AssertSame(YamlStyle.DoubleQuoted);

    [Fact]
    public void Single_quotes_say_the_same() => AssertSame(YamlStyle.SingleQuoted);

    [Fact]
    public void Comments_and_empty_lines_change_nothing() =>
        AssertSame(text => string.Join('\n', text.Split('\n').Select(l => l + "  \n\n    # a remark: {[\"*&\n")));

    [Fact]
    public void The_letters_of_a_camera_report_mark_a_take_too() =>
        AssertSame(text =>
            text.Replace("mark: good", "mark: G", StringComparison.Ordinal)
                .Replace("mark: hold", "mark: h", StringComparison.Ordinal)
                .Replace("mark: ng", "mark: NG", StringComparison.Ordinal)
        );

    [Fact]
    public void A_focal_length_may_have_its_unit() => AssertSame(text => FocalLength().Replace(text, "$0mm"));

    [Fact]
    public void Keys_in_another_order_say_the_same() => AssertSame(KeyOrder.Reversed);

    [Fact]
    public void Files_in_another_order_say_the_same() => Assert.Equal(_values, Values(new Backwards(Beside(TextFiles.Of([.. _sample])))));

    [Fact]
    public void Files_under_other_names_say_the_same() =>
        Assert.Equal(_values, Values(Beside(TextFiles.Of([.. _sample.Select(f => (Renamed(f.Name), f.Text))]))));

    [Fact]
    public void One_big_file_reads_the_same()
    {
        var whole = new StringBuilder();
        foreach (var (name, text) in _sample.Where(f => !f.Name.StartsWith("rolls/", StringComparison.Ordinal)))
        {
            whole.Append(name == "production.yaml" ? text : WithoutVersion(text));
        }

        whole.Append("rolls:\n");
        foreach (var (_, text) in _sample.Where(f => f.Name.StartsWith("rolls/", StringComparison.Ordinal)))
        {
            var lines = WithoutVersion(text).Split('\n').Where(l => l.Length > 0 && l[0] != '#').ToList();
            whole.Append("  - ").AppendJoin("\n    ", lines).Append('\n');
        }

        Assert.Equal(_values, Values(Beside(TextFiles.OneFile(whole.ToString()))));
    }

    [Fact]
    public void A_map_merged_from_an_anchor_has_what_it_repeats()
    {
        var roll = SmallProduction
            .Roll.Replace("- take: {scene: 1, shot: A, take: 1", "- take: &first {scene: 1, shot: A, take: 1", StringComparison.Ordinal)
            .Replace(
                "- take: {scene: 1, shot: A, take: 2, frames: 96fr",
                "- take: {<<: *first, take: 2, to: 20+00",
                StringComparison.Ordinal
            );
        var result = ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", roll));

        Assert.Empty(result.Findings);
        var take = result.Production!.Rolls[0].Takes.Last();
        Assert.Equal(("1A/2", "25mm", 800), (take.Slate, take.Lens!.Value, take.To.Value.Frames));
    }

    static void AssertSame(Func<string, string> rewrite) =>
        Assert.Equal(_values, Values(Beside(TextFiles.Of([.. _sample.Select(f => (f.Name, rewrite(f.Text)))]))));

    static string Values(IProductionFiles files)
    {
        var result = ProductionReader.Read(files);
        Assert.Empty(result.Findings);
        return RecordText.Values(result.Production!);
    }

    static TextFiles Beside(TextFiles files) => files.With("school.svg", File.ReadAllBytes(Path.Combine(Repository.Sample, "school.svg")));

    static string WithoutVersion(string text) => text.Replace("spoolbook: 1\n", "", StringComparison.Ordinal);

    // R10 comes after R2 whatever their files are called.
    static string Renamed(string name) =>
        name.StartsWith("rolls/", StringComparison.Ordinal)
            ? "rolls/z" + string.Concat(name[6..].Reverse()) + ".yaml"
            : name.Replace(".yaml", ".yml", StringComparison.Ordinal);

    static ImmutableArray<(string, string)> Sample()
    {
        var files = new FolderFiles(Repository.Sample);
        return [.. files.Names.Select(n => (n, files.Open(n).Text!))];
    }

    sealed class Backwards(IProductionFiles files) : IProductionFiles
    {
        public bool IsOneFile => files.IsOneFile;

        public ImmutableArray<string> Names => [.. files.Names.Reverse()];

        public FileText Open(string name) => files.Open(name);

        public PictureFile OpenPicture(string path) => files.OpenPicture(path);
    }

    [GeneratedRegex("focal: [0-9.]+")]
    private static partial Regex FocalLength();
}
