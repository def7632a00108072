using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Writing;

/// <summary>What is written stays whole, and what is a person's stays theirs.</summary>
public sealed partial class SafeWritingTests : IDisposable
{
    readonly WritingBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Nothing_takes_its_place_before_all_of_it_is_on_the_disk_and_the_folder_is_synced_afterwards()
    {
        var disk = new FaultyDisk();
        Import(disk);

        var done = disk.Done.ToList();
        var renames = done.Index().Where(d => d.Item is "rename r01.yaml" or "rename r02.yaml").Select(d => d.Index).ToList();
        Assert.Equal(2, renames.Count);
        Assert.DoesNotContain(done[renames[0]..renames[1]], d => d.StartsWith("write", StringComparison.Ordinal));
        Assert.Equal(
            done[..renames[0]].Where(d => d.StartsWith("create", StringComparison.Ordinal)).Select(d => d[7..]).Order(),
            done[..renames[0]].Where(d => d.StartsWith("flush", StringComparison.Ordinal)).Select(d => d[6..]).Distinct().Order()
        );
        Assert.Equal("sync rolls", done[renames[1] + 1]);
    }

    [Fact]
    public void An_import_that_was_killed_half_way_is_finished_by_the_next_check_which_says_so()
    {
        _bench.Kill("rename r02.yaml", "import", "takes.csv", "production");
        Assert.NotEqual(
            _bench.Roll("r02").Contains("Sun gone", StringComparison.Ordinal),
            _bench.Roll("r01").Contains("Gulls", StringComparison.Ordinal)
        );

        var (status, _, error) = _bench.Run("check", "production");

        Assert.Equal(0, status);
        Assert.Equal(
            $"spoolbook: 'import' was cut short in {_bench.Production}, and is finished now: rolls/r01.yaml, rolls/r02.yaml.\n",
            error
        );
        Assert.Contains("Sun gone", _bench.Roll("r02"), StringComparison.Ordinal);
        Assert.Contains("Gulls", _bench.Roll("r01"), StringComparison.Ordinal);
        Assert.Equal("", _bench.Run("check", "production").Error);
    }

    [Fact]
    public void An_import_of_which_a_new_file_was_lost_is_undone()
    {
        var (one, two) = (_bench.Roll("r01"), _bench.Roll("r02"));
        _bench.Kill("rename r02.yaml", "import", "takes.csv", "production");
        var waiting = Directory.GetFiles(Path.Combine(_bench.Production, "rolls"), ".*.spoolbook").Single();
        File.Delete(waiting);

        Assert.Contains("is undone now", _bench.Run("check", "production").Error, StringComparison.Ordinal);
        Assert.Equal((one, two), (_bench.Roll("r01"), _bench.Roll("r02")));
    }

    [Fact]
    public void A_roll_that_a_person_corrected_after_the_kill_keeps_the_correction()
    {
        _bench.Kill("rename r02.yaml", "import", "takes.csv", "production");
        _bench.Rewrite("rolls/r02.yaml", "Last light", "The very last light");

        _bench.Run("check", "production");

        Assert.Contains("The very last light", _bench.Roll("r02"), StringComparison.Ordinal);
        Assert.DoesNotContain("Gulls", _bench.Roll("r01"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_users_own_files_beside_are_left_alone()
    {
        foreach (var name in (string[])["rolls/r02.yaml.part", "rolls/r02.yaml.before", "rolls/.mine.spoolbook"])
        {
            File.WriteAllText(Path.Combine(_bench.Production, name), "mine");
        }

        _bench.Kill("rename r02.yaml", "import", "takes.csv", "production");
        _bench.Run("check", "production");

        Assert.Equal("mine", File.ReadAllText(Path.Combine(_bench.Production, "rolls/r02.yaml.part")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(_bench.Production, "rolls/r02.yaml.before")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(_bench.Production, "rolls/.mine.spoolbook")));
    }

    [Fact]
    public void The_last_import_can_be_taken_back_once()
    {
        var before = _bench.State();
        Import();
        Assert.NotEqual(before, _bench.State());

        var (status, said, _) = _bench.Run("import", "--undo", "production");

        Assert.Equal(0, status);
        Assert.Equal("Took back the import of takes.csv: rolls/r01.yaml, rolls/r02.yaml as before.\n", said);
        Assert.Equal(before, _bench.State());
        var again = _bench.Run("import", "--undo", "production");
        Assert.Equal(1, again.Status);
        Assert.Contains("There is no import to take back", again.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_import_is_not_taken_back_over_a_later_change()
    {
        Import();
        _bench.Rewrite("rolls/r02.yaml", "Last light", "The very last light");
        var before = _bench.State();

        var (status, _, error) = _bench.Run("import", "--undo", "production");

        Assert.Equal(1, status);
        Assert.Contains("rolls/r02.yaml was changed since the import of takes.csv", error, StringComparison.Ordinal);
        Assert.Equal(before, _bench.State());
    }

    [Fact]
    public void Undo_takes_the_production_alone_and_an_import_takes_both()
    {
        Assert.Equal(2, _bench.Run("import", "--undo", "production", "takes.csv").Status);
        Assert.Equal(2, _bench.Run("import", "--undo", "nowhere").Status);
        Assert.Equal(2, _bench.Run("import", "takes.csv").Status);
        Assert.Equal(2, _bench.Run("import").Status);
    }

    [Theory]
    [InlineData("import takes.csv production", "")]
    [InlineData("make production", "papers")]
    public void A_folder_that_another_is_writing_in_is_left_alone_and_the_other_is_named(string command, string folder)
    {
        var before = _bench.State();
        var around = new CommandEnvironment(TextWriter.Null, TextWriter.Null, _bench.Folder, Workbench.Made, Colour: false, Width: 100);
        using (WorkFolder.Open(Path.Combine(_bench.Production, folder), "make", around))
        {
            var (status, said, error) = _bench.Run(command.Split(' '));

            Assert.Equal(ExitStatus.Busy, status);
            Assert.Equal("", said);
            Assert.Contains(
                string.Create(CultureInfo.InvariantCulture, $"is being written by process {Environment.ProcessId} (spoolbook make) since "),
                error,
                StringComparison.Ordinal
            );
        }

        Assert.Equal(before, _bench.State());
        Assert.Equal(0, _bench.Run(command.Split(' ')).Status);
    }

    [Fact]
    public async Task Of_eight_imports_at_once_each_that_reports_success_has_its_take_in_the_roll()
    {
        var remarks = Enumerable.Range(1, 8).Select(n => $"Import number {n}").ToList();
        string[] takes = ["1,A,1", "1,A,2", "1,A,3", "1,B,1", "1,B,2", "1,C,1", "1,C,2", "1,D,1"];
        for (var n = 0; n < 8; n++)
        {
            File.WriteAllText(_bench.PathOf($"t{n}.csv"), $"Roll,Scene,Shot,Take,Remarks\nR01,{takes[n]},{remarks[n]}\n");
        }

        var runs = await Task.WhenAll(Enumerable.Range(0, 8).Select(n => Task.Run(() => _bench.Run("import", $"t{n}.csv", "production"))));

        Assert.Contains(runs, run => run.Status == 0);
        Assert.All(runs, run => Assert.True(run.Status is 0 or ExitStatus.Busy, $"{run.Status}: {run.Error}{run.Out}"));
        var rolls = _bench.Roll("r01");
        Assert.Equal(runs.Select(run => run.Status == 0), remarks.Select(remark => rolls.Contains(remark, StringComparison.Ordinal)));
    }

    [Fact]
    public void Papers_of_a_roll_that_is_gone_go_and_are_named()
    {
        Make();
        var reports = Directory.GetFiles(_bench.Papers, "camera-report-R00*").Select(f => Path.GetFileName(f)).Order().ToList();
        Assert.NotEmpty(reports);
        File.WriteAllText(Path.Combine(_bench.Papers, "call-sheet.pdf"), "mine");
        TakeOut("r00");

        var said = Make().Out;

        Assert.All(reports, report => Assert.False(File.Exists(Path.Combine(_bench.Papers, report!))));
        Assert.EndsWith(
            $"Removed {reports.Count} that Spoolbook wrote and no longer makes:\n{string.Concat(reports.Select(r => $"  {r}\n"))}",
            said,
            StringComparison.Ordinal
        );
        Assert.Equal("mine", File.ReadAllText(Path.Combine(_bench.Papers, "call-sheet.pdf")));
    }

    [Fact]
    public void A_paper_changed_by_hand_is_kept_beside_the_new_one_and_never_removed()
    {
        Make();
        var report = Path.Combine(_bench.Papers, "camera-report-R00.html");
        File.WriteAllText(Path.Combine(_bench.Papers, "index.html"), "my page");
        File.WriteAllText(report, "my report");
        TakeOut("r00");

        var error = Make().Error;

        Assert.Contains(
            "index.html was not as Spoolbook wrote it: what was there is index.changed-by-hand.html now.\n",
            error,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "camera-report-R00.html is no longer made, and is not as Spoolbook wrote it: it is still there.\n",
            error,
            StringComparison.Ordinal
        );
        Assert.Equal("my page", File.ReadAllText(Path.Combine(_bench.Papers, "index.changed-by-hand.html")));
        Assert.Equal("my report", File.ReadAllText(report));
        Assert.Equal("", Make().Error);
    }

    [Fact]
    public void A_folder_in_the_place_of_a_paper_is_named_before_any_paper_is_replaced()
    {
        Make();
        File.Delete(Path.Combine(_bench.Papers, "index.html"));
        Directory.CreateDirectory(Path.Combine(_bench.Papers, "index.html"));
        _bench.Rewrite("rolls/r01.yaml", "Dog in shot", "Cat in shot");
        var before = _bench.State();

        var (status, _, error) = _bench.Run("make", "production");

        Assert.Equal(ExitStatus.OutsideFailed, status);
        Assert.Contains("index.html is a folder", error, StringComparison.Ordinal);
        Assert.Equal(before, _bench.State());
    }

    [Fact]
    public void A_link_in_the_place_of_a_paper_is_replaced_and_not_written_through()
    {
        var outside = _bench.PathOf("outside.txt");
        File.WriteAllText(outside, "theirs");
        Directory.CreateDirectory(_bench.Papers);
        File.CreateSymbolicLink(Path.Combine(_bench.Papers, "index.html"), outside);
        File.CreateSymbolicLink(Path.Combine(_bench.Papers, "index.html.part"), outside);

        Assert.Contains("index.html was a link to", Make().Error, StringComparison.Ordinal);

        Assert.Equal("theirs", File.ReadAllText(outside));
        Assert.Null(FileState.LinkTarget(Path.Combine(_bench.Papers, "index.html")));
        Assert.Equal(outside, FileState.LinkTarget(Path.Combine(_bench.Papers, "index.html.part")));
    }

    [Fact]
    public void Nothing_is_written_through_links_that_came_with_a_production()
    {
        var outside = _bench.PathOf("outside.txt");
        File.WriteAllText(outside, "theirs");
        var hidden = Directory.CreateDirectory(Path.Combine(_bench.Production, ".spoolbook")).FullName;
        File.CreateSymbolicLink(Path.Combine(hidden, "lock"), outside);
        Import();
        Assert.Equal("theirs", File.ReadAllText(outside));

        Directory.Delete(hidden, recursive: true);
        Directory.CreateSymbolicLink(hidden, Directory.CreateDirectory(_bench.PathOf("elsewhere")).FullName);
        Assert.Equal(ExitStatus.OutsideFailed, _bench.Run("import", "takes.csv", "production").Status);
        Assert.Empty(Directory.GetFiles(_bench.PathOf("elsewhere")));
    }

    [Fact]
    public void A_roll_file_that_is_a_link_out_of_the_production_is_not_written()
    {
        var (roll, outside) = (Path.Combine(_bench.Production, "rolls", "r02.yaml"), _bench.PathOf("outside.yaml"));
        File.Move(roll, outside);
        File.CreateSymbolicLink(roll, outside);
        var before = File.ReadAllText(outside);

        var (status, _, error) = _bench.Run("import", "takes.csv", "production");

        Assert.Equal(ExitStatus.OutsideFailed, status);
        Assert.Contains("rolls/r02.yaml is a link that leads out of the production", error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(outside));
    }

    [Theory]
    [InlineData("put ..%2Foutside.txt .a.spoolbook OLD NEW old-a")]
    [InlineData("put %2Fetc%2Fpasswd .a.spoolbook OLD NEW old-a")]
    [InlineData("put rolls%2Fr01.yaml r02.yaml OLD NEW old-a")]
    [InlineData("put rolls%2Fr01.yaml .a.spoolbook OLD NEW ..%2Fkit.yaml")]
    public void A_journal_that_came_with_a_production_leads_nowhere_else(string line)
    {
        var outside = _bench.PathOf("outside.txt");
        File.WriteAllText(outside, "theirs");
        var hidden = Directory.CreateDirectory(Path.Combine(_bench.Production, ".spoolbook")).FullName;
        File.WriteAllText(
            Path.Combine(hidden, "journal"),
            $"spoolbook-journal-1 import  \n{line.Replace("NEW", FileState.Of("theirs"u8), StringComparison.Ordinal)}\nready\n"
        );
        var before = _bench.State();

        var (status, _, error) = _bench.Run("check", "production");

        Assert.Equal(ExitStatus.OutsideFailed, status);
        Assert.Contains("names files that Spoolbook does not write", error, StringComparison.Ordinal);
        Assert.Equal(before, _bench.State());
    }

    [Fact]
    public void Nothing_but_the_work_on_files_writes_a_file()
    {
        var others =
            from file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
            where !file.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin" or "FileWork.cs")
            from line in File.ReadLines(file)
            where Writes().IsMatch(line)
            select $"{Path.GetFileName(file)}: {line.Trim()}";

        Assert.Empty(others);
    }

    [GeneratedRegex(
        @"\b(File\.(Write|Move|Delete|Create|Copy|Replace|Append|Open(?!Read)|Set)|Directory\.(Create|Delete|Move)" + @"|FileMode\.)"
    )]
    private static partial Regex Writes();

    void Import(FaultyDisk? disk = null) =>
        Assert.Equal(0, _bench.Run(disk ?? new FaultyDisk(), "import", "takes.csv", "production").Status);

    // A roll that is taken out on purpose: its file goes, and the ledger that would miss it.
    void TakeOut(string roll)
    {
        File.Delete(Path.Combine(_bench.Production, "rolls", $"{roll}.yaml"));
        File.Delete(Path.Combine(_bench.Papers, "ledger.json"));
    }

    (string Out, string Error) Make()
    {
        var (status, said, error) = _bench.Run("make", "production");
        Assert.Equal(0, status);
        return (said, error);
    }
}
