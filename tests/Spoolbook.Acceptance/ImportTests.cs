using System.Text;
using System.Text.Json;
using Spoolbook.Acceptance.Folders;

namespace Spoolbook.Acceptance;

/// <summary>Takes typed into a table and imported into the roll files.</summary>
public sealed class ImportTests : IDisposable
{
    const string Heads = "Roll,Scene,Shot,Take,Mark,To,Lens,Stop,Filter,Remarks\n";

    readonly FolderCopy _production = new(Repository.Sample);

    public void Dispose() => _production.Dispose();

    [Fact]
    public void A_new_row_becomes_a_line_in_the_style_of_the_roll_at_its_place_in_the_log()
    {
        var run = Import(Heads + "R02,1,A,5,NG,60+10,10mm,8,ND3 + PL,\"Sun gone, gulls\"\n");

        Assert.Equal(0, run.Status);
        var lines = Roll("r02").Split('\n');
        var after = Array.FindIndex(lines, l => l.Contains("Last light", StringComparison.Ordinal));
        Assert.Equal(
            "  - take: {scene: 1, shot: A, take: 5, to: 60+10, lens: 10mm, stop: 8, filter: [ND3, PL], mark: ng, note: \"Sun gone, "
                + "gulls\"}",
            lines[after + 1]
        );
        Assert.Equal(
            File.ReadAllText(Path.Combine(Repository.Sample, "rolls", "r02.yaml")),
            string.Join('\n', lines.Where((_, i) => i != after + 1))
        );
    }

    [Fact]
    public void What_a_take_says_beside_the_columns_of_the_sheet_is_brought_in_under_its_keys()
    {
        var run = Import(
            "Roll,Scene,Shot,Take,Mark,To,reading,measured,sync,sound-roll,slate,at\n" + "R02,1,A,5,NG,60+10,8,6ft + 9ft,no,,tail,16:58\n"
        );

        Assert.Equal(0, run.Status);
        Assert.Contains(
            "{scene: 1, shot: A, take: 5, to: 60+10, mark: ng, reading: 8, measured: [6ft, 9ft], sync: no, slate: tail, at: 16:58}",
            Unordered(Roll("r02")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_value_that_a_key_cannot_have_is_refused_and_nothing_is_written()
    {
        var before = Roll("r02");
        var run = Import("Roll,Scene,Shot,Take,Mark,To,slate\nR02,1,A,5,NG,60+10,nowhere\n");

        Assert.NotEqual(0, run.Status);
        Assert.Equal(before, Roll("r02"));
    }

    // The keys of the new line in the order of the test: the editor puts them in the order of the roll file's.
    static string Unordered(string text)
    {
        var keys = new[] { "scene", "shot", "take", "to", "mark", "reading", "measured", "sync", "slate", "at" };
        var line = text.Split('\n').Single(l => l.Contains("take: 5, to: 60+10", StringComparison.Ordinal));
        var parts = line[(line.IndexOf("scene", StringComparison.Ordinal))..]
            .TrimEnd('}')
            .Replace("6ft, 9ft", "6ft; 9ft", StringComparison.Ordinal);
        var said = parts.Split(", ").ToDictionary(p => p[..p.IndexOf(':', StringComparison.Ordinal)], StringComparer.Ordinal);
        return "{" + string.Join(", ", keys.Select(k => said[k])).Replace("6ft; 9ft", "6ft, 9ft", StringComparison.Ordinal) + "}";
    }

    [Fact]
    public void A_program_reads_in_JSON_what_was_written()
    {
        Table(Heads + "R02,1,A,5,NG,60+10,10mm,8,,Sun gone\n");
        var told = Report("--format", "json");

        Assert.True(told.GetProperty("well").GetBoolean());
        Assert.True(told.GetProperty("written").GetBoolean());
        Assert.Equal(1, told.GetProperty("takes").GetProperty("new").GetInt32());
        Assert.Empty(told.GetProperty("refused").EnumerateArray());
        var file = Assert.Single(told.GetProperty("files").EnumerateArray());
        Assert.Equal("rolls/r02.yaml", file.GetProperty("file").GetString());
        Assert.Contains(
            "\n+  - take: {scene: 1, shot: A, take: 5, to: 60+10",
            file.GetProperty("difference").GetString(),
            StringComparison.Ordinal
        );
        Assert.Contains("take: 5, to: 60+10", Roll("r02"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_reads_in_JSON_which_cell_is_refused_and_that_nothing_was_written()
    {
        Table(Heads + "R02,1,A,5,splendid,60+10,10mm,8,,\n");
        var before = Roll("r02");
        var told = Report("--format", "json");

        Assert.False(told.GetProperty("well").GetBoolean());
        Assert.False(told.GetProperty("written").GetBoolean());
        Assert.Equal("takes.csv:2:E", Assert.Single(told.GetProperty("refused").EnumerateArray()).GetProperty("where").GetString());
        Assert.Empty(told.GetProperty("files").EnumerateArray());
        Assert.Equal(before, Roll("r02"));
    }

    [Fact]
    public void A_program_that_only_asks_gets_the_difference_and_nothing_is_written()
    {
        Table(Heads + "R02,1,A,5,NG,60+10,10mm,8,,\n");
        var before = Roll("r02");
        var told = Report("--dry-run", "--format", "json");

        Assert.True(told.GetProperty("well").GetBoolean());
        Assert.False(told.GetProperty("written").GetBoolean());
        Assert.Single(told.GetProperty("files").EnumerateArray());
        Assert.Equal(before, Roll("r02"));
    }

    JsonElement Report(params string[] options) =>
        JsonDocument.Parse(InProcess.Run(_production.Path, ["import", "takes.csv", ".", .. options]).Said).RootElement;

    [Fact]
    public void Only_the_file_of_the_roll_is_written()
    {
        Table(Heads + "R02,1,A,5,NG,60+10,10mm,8,,\n");
        var before = _production.Contents();

        InProcess.Run(_production.Path, "import", "takes.csv", ".");

        var written = _production.Contents().Except(before).Where(file => !file.StartsWith(".spoolbook/", StringComparison.Ordinal));
        Assert.Equal("rolls/r02.yaml", Assert.Single(written).Split(' ')[0]);
    }

    [Theory]
    [InlineData(";")]
    [InlineData("\t")]
    public void Semicolons_and_tabs_work_like_commas(string separator)
    {
        var run = Import((Heads + "R02,1,A,5,NG,60+10,10mm,8,,Sun gone\n").Replace(",", separator, StringComparison.Ordinal));

        Assert.Equal(0, run.Status);
        Assert.Contains("take: 5, to: 60+10", Roll("r02"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_order_mark_and_line_ends_of_another_system_are_no_matter()
    {
        var table = (Heads + "R02,1,A,5,NG,60+10,10mm,8,,Sun gone\n").Replace("\n", "\r\n", StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_production.Path, "takes.csv"), table, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));

        Assert.Equal(0, InProcess.Run(_production.Path, "import", "takes.csv", ".").Status);
        Assert.Contains("take: 5, to: 60+10", Roll("r02"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_roll_file_keeps_its_byte_order_mark_and_its_line_ends()
    {
        var path = Path.Combine(_production.Path, "rolls", "r02.yaml");
        File.WriteAllText(
            path,
            File.ReadAllText(path).Replace("\n", "\r\n", StringComparison.Ordinal),
            new UTF8Encoding(encoderShouldEmitUTF8Identifier: true)
        );

        Assert.Equal(0, Import(Heads + "R02,1,A,5,NG,60+10,10mm,8,,Sun gone\n").Status);

        var bytes = File.ReadAllBytes(path);
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        var text = Encoding.UTF8.GetString(bytes);
        Assert.Contains("mark: ng, note: Sun gone}\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dry_run_shows_the_difference_and_writes_nothing()
    {
        Table(Heads + "R02,1,A,5,NG,60+10,10mm,8,,Sun gone\n");
        var before = _production.Contents();

        var run = InProcess.Run(_production.Path, "import", "takes.csv", ".", "--dry-run");

        Assert.Equal(0, run.Status);
        Assert.Contains("--- a/rolls/r02.yaml\n+++ b/rolls/r02.yaml\n@@ -", run.Said, StringComparison.Ordinal);
        Assert.Contains(
            "\n+  - take: {scene: 1, shot: A, take: 5, to: 60+10, lens: 10mm, stop: 8, mark: ng, note: Sun gone}\n",
            run.Said,
            StringComparison.Ordinal
        );
        Assert.Equal(before, _production.Contents());
    }

    [Fact]
    public void Takes_that_would_bring_new_errors_are_refused_with_them_and_nothing_is_written()
    {
        Table(Heads + "R02,1,A,5,NG,60+10,10mm,8,,\nR01,2,A,3,G,98+00,25mm,5.6,,\n");
        var before = _production.Contents();

        var run = InProcess.Run(_production.Path, "import", "takes.csv", ".");

        Assert.Equal(1, run.Status);
        Assert.Contains("[counter/take-repeated]", run.Said, StringComparison.Ordinal);
        Assert.Contains("Nothing was written", run.Complained, StringComparison.Ordinal);
        Assert.Equal(before, _production.Contents());
    }

    [Theory]
    [InlineData("R09,1,A,5,NG,60+10,10mm,8,,", "takes.csv:2:A", "no roll 'R09'")]
    [InlineData("R02,1,A,five,NG,60+10,10mm,8,,", "takes.csv:2:D", "'five' is no number of a take")]
    [InlineData("R02,,A,5,NG,60+10,10mm,8,,", "takes.csv:2:B", "no Scene")]
    [InlineData("R02,1,A,5,OK,60+10,10mm,8,,", "takes.csv:2:E", "'OK' is no mark")]
    [InlineData("R02,1,A,5,,60+10,10mm,8,,", "takes.csv:2:E", "no mark")]
    [InlineData("R02,1,A,5,NG,,10mm,8,,", "takes.csv:2", "nothing says where it ends")]
    [InlineData("R02,1,A,5,NG,60 yards,10mm,8,,", "takes.csv:2:F", "60 yards")]
    [InlineData("R02,1,A,5,NG,60+10,10mm,11-Aug,,", "takes.csv:2:H", "11-Aug")]
    [InlineData("R02,1,A,5,NG,60+10,10mm,8,,\nR02,1,A,5,G,61+10,10mm,8,,", "takes.csv:3:D", "twice: first at takes.csv:2:D")]
    [InlineData("R02,1,A,5,NG,60+10,10mm,8,,\"Sun gone", "takes.csv:2:J", "never closed")]
    public void What_cannot_be_read_is_refused_with_the_address_of_the_cell(string rows, string address, string says)
    {
        Table(Heads + rows + "\n");
        var before = _production.Contents();

        var run = InProcess.Run(_production.Path, "import", "takes.csv", ".");

        Assert.Equal(1, run.Status);
        Assert.Contains(run.Said.Split('\n'), l =>
            l.StartsWith(address + ": error: ", StringComparison.Ordinal) && l.Contains(says, StringComparison.Ordinal)
        );
        Assert.Equal(before, _production.Contents());
    }

    [Theory]
    [InlineData("Take,Mark\n1,G\n", "No row here has the heads")]
    [InlineData("Roll,Scene,Mark\nR02,1,G\n", "no column 'Take'")]
    [InlineData("Roll,Scene,Take,Take\nR02,1,1,2\n", "head of another column too, takes.csv:1:C")]
    [InlineData("Roll,Scene,Shot,Take,Remaks\nR02,1,A,4,Hello\n", "'Remaks' is no head")]
    public void Heads_that_are_missing_doubled_or_misspelt_are_refused(string table, string says)
    {
        var run = Import(table);

        Assert.Equal(1, run.Status);
        Assert.Contains(says, run.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_table_is_wrong_use() => Assert.Equal(2, InProcess.Run(_production.Path, "import", "nowhere.csv", ".").Status);

    CommandRun Import(string table)
    {
        Table(table);
        return InProcess.Run(_production.Path, "import", "takes.csv", ".");
    }

    void Table(string text) => _production.Write("takes.csv", text);

    string Roll(string name) => File.ReadAllText(Path.Combine(_production.Path, "rolls", name + ".yaml"));
}
