using System.Collections.Immutable;
using Spoolbook.Acceptance.Silent;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Writing;

/// <summary>Papers that would come out the same are not printed again; papers that would not, always are.</summary>
public sealed class UnchangedPapersTests : IDisposable
{
    const int Changes = 12;

    readonly Bench _bench = new();
    readonly string _production;
    readonly string _templates;

    public UnchangedPapersTests()
    {
        _production = Path.Combine(_bench.CopyOf(Path.Combine(TestFolders.Clean, "hand-held-one-roll")), "sunday.yaml");
        _templates = _bench.PathOf("own");
        Directory.CreateDirectory(_templates);
        File.WriteAllText(Path.Combine(_templates, "words.en.txt"), "camera-report = Camera sheet\n");
    }

    string Papers => _bench.PathOf("papers");

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Papers_of_an_unchanged_record_are_not_printed_again()
    {
        Make();
        Assert.True(IsAsBefore());
    }

    [Fact]
    public void Templates_of_the_departments_own_are_used_from_the_first_make_on()
    {
        _bench.Run("make", _production, "--out", "papers");
        Assert.False(IsAsBefore());
        Make();
        Assert.Contains("Camera sheet", File.ReadAllText(Path.Combine(Papers, "camera-report-1.html")), StringComparison.Ordinal);
    }

    public static TheoryData<string> Reasons =>
        [
            "a paper changed by hand",
            "a paper deleted",
            "a paper that is a link",
            "the list of papers deleted",
            "the note of their origin deleted",
            "the note of their origin cut short",
            "another word of the department's own",
            "a template of the department's own that was not there before",
            "a remark in the record",
            "the next day",
            "a draft",
        ];

    [Theory]
    [MemberData(nameof(Reasons))]
    public void Papers_are_printed_again_for(string reason)
    {
        Make();
        Assert.True(IsAsBefore());
        var report = Path.Combine(Papers, "camera-report-1.html");
        var origin = Path.Combine(Papers, PaperOrigin.Name);
        switch (reason)
        {
            case "a paper changed by hand":
                File.AppendAllText(report, "<!-- mine -->");
                break;
            case "a paper deleted":
                File.Delete(report);
                break;
            case "a paper that is a link":
                File.Move(report, _bench.PathOf("elsewhere.html"));
                File.CreateSymbolicLink(report, _bench.PathOf("elsewhere.html"));
                break;
            case "the list of papers deleted":
                File.Delete(Path.Combine(Papers, PaperManifest.Name));
                break;
            case "the note of their origin deleted":
                File.Delete(origin);
                break;
            case "the note of their origin cut short":
                File.WriteAllText(origin, File.ReadAllText(origin)[..40]);
                break;
            case "another word of the department's own":
                File.WriteAllText(Path.Combine(_templates, "words.en.txt"), "camera-report = Report\n");
                break;
            case "a template of the department's own that was not there before":
                File.Copy(Path.Combine(Repository.Root, "templates/rolls.html"), Path.Combine(_templates, "rolls.html"));
                break;
            case "a remark in the record":
                File.AppendAllText(_production, "# one more look at the gate\n");
                break;
        }

        Assert.False(IsAsBefore(made: reason == "the next day" ? Workbench.Made.AddDays(1) : Workbench.Made, draft: reason == "a draft"));
    }

    [Fact]
    public void Whatever_value_is_changed_the_papers_are_those_of_the_changed_record()
    {
        var text = File.ReadAllText(_production);
        var all = WrittenValues.Of("sunday.yaml", text).ToList();
        var changes = (
            from value in all
            let others = all.Where(v => v.Key == value.Key && v != value).Select(v => v.Text)
            from slip in ValueSlips.Of(value, text, [.. others])
            select slip.Text
        ).ToList();
        var step = Math.Max(1, changes.Count / Changes);
        for (var i = 0; i < changes.Count; i += step)
        {
            File.WriteAllText(_production, changes[i]);
            Make("--draft");
            _bench.Run("make", _production, "--out", "fresh", "--templates", "own", "--draft");
            Assert.Equal("", string.Join('\n', PapersIn("fresh").Except(PapersIn("papers"))));
            Directory.Delete(_bench.PathOf("fresh"), recursive: true);
        }
    }

    void Make(params string[] options) => _bench.Run(["make", _production, "--out", "papers", "--templates", "own", .. options]);

    bool IsAsBefore(DateTimeOffset? made = null, bool draft = false)
    {
        var around = new CommandEnvironment(TextWriter.Null, TextWriter.Null, _bench.Folder, Workbench.Made, Colour: false, Width: 100);
        using var work = WorkFolder.Open(Papers, "make", around);
        var stages = new PaperStages(new TemplateFolder(_templates), work, made ?? Workbench.Made, draft, new Progress());
        return stages.Print(Pipeline.Run(_production, around).Found).IsAsBefore;
    }

    ImmutableArray<string> PapersIn(string folder) =>
        Directory.Exists(_bench.PathOf(folder))
            ? [.. Bench.Bytes(_bench.PathOf(folder)).Select(p => $"{p.Key} {FileState.Of(p.Value)}")]
            : [];
}
