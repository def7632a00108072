using System.Text;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Writing;

/// <summary>Papers of a long shoot are laid down as they are made, and still take their places together or not at all.</summary>
public sealed class StagedPapersTests : IDisposable
{
    readonly WritingBench _bench = new();

    string Folder => _bench.PathOf("papers");

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Papers_that_wait_on_the_disk_are_the_papers_that_waited_in_memory()
    {
        var found = Pipeline.Run(Repository.Sample, Around(Folder, new FaultyDisk())).Found;
        using var work = WorkFolder.Open(Folder, "make", Around(Folder, new FaultyDisk()));

        var held = PaperPrinter.Print(found.Books!, found.Findings, found.Waived, Options(null));
        var laid = PaperPrinter.Print(found.Books!, found.Findings, found.Waived, Options(new PaperStaging(work, inMemory: 100_000)));

        Assert.Equal(held.Files.Select(f => (f.Name, f.Digest)), laid.Files.Select(f => (f.Name, f.Digest)));
        Assert.True(laid.Files.Where(f => f.Staged is null).Sum(f => f.Bytes.Length) <= 100_000);
        Assert.All(laid.Files.Where(f => f.Staged is not null), file => Assert.Equal(file.Digest, FileState.Of(file.Staged!)));

        new PaperFolder(work).Put(laid.Files);
        Assert.All(held.Files, file => Assert.Equal(file.Digest, FileState.Of(Path.Combine(Folder, file.Name))));
        work.Dispose();
        Assert.Equal([Path.GetFileName(PaperManifest.Name)], Hidden(Folder));

        static PrintOptions Options(IPaperStaging? staging) =>
            new(new DateTimeOffset(2026, 10, 5, 0, 0, 0, TimeSpan.Zero), new HouseTemplates(null)) { Staging = staging };
    }

    [Fact]
    public void Whatever_operation_is_killed_or_fails_the_next_command_finds_all_old_papers_or_all_new_ones()
    {
        Make(Folder, new FaultyDisk(), ["order: push one", "report of R1", "report of R2", "labels"]);
        string[] asked = ["order: normal", "report of R1", "report of R2, read again", "labels", "report of R3"];
        var made = Copy();
        var counted = new FaultyDisk();
        Make(made, counted, asked);
        var (old, @new) = (State(Folder), State(made));
        Assert.Contains(counted.Done, done => done.StartsWith("create new-", StringComparison.Ordinal));
        Assert.NotEqual(old, @new);

        foreach (var fault in (Fault[])[Fault.Killed, Fault.Failed, Fault.Failing])
        {
            for (var at = 0; at < counted.Done.Count; at++)
            {
                var folder = Copy();
                try
                {
                    Make(folder, new FaultyDisk(fault, at), asked);
                }
                catch (Exception e) when (e is ProcessKilledException or IOException)
                {
                    // What is left of it is what is looked at.
                }

                WorkFolder.Settle(folder, "check", Around(folder, new FaultyDisk()));
                var state = State(folder);
                Assert.True(state == old || state == @new, $"{fault} at {at}, {counted.Done[at]}: {state}");
                Assert.DoesNotContain(Hidden(folder), name => Journal.IsNameStaged(name) || Journal.IsNameKept(name));
            }
        }
    }

    [Fact]
    public void Papers_that_were_laid_down_and_never_put_in_place_go_with_the_folders_lock()
    {
        using (var work = WorkFolder.Open(Folder, "make", Around(Folder, new FaultyDisk())))
        {
            work.Stage("order.html", "half a shoot"u8);
            Assert.Single(Hidden(Folder), Journal.IsNameStaged);
        }

        Assert.False(Directory.Exists(Folder));
    }

    [Fact]
    public void A_disk_too_full_to_lay_a_paper_down_keeps_it_in_memory_and_whoever_writes_it_says_so()
    {
        var counted = new FaultyDisk();
        using var twin = WorkFolder.Open(_bench.PathOf("twin"), "make", Around(Folder, counted));
        using var work = WorkFolder.Open(Folder, "make", Around(Folder, new FaultyDisk(Fault.Failing, counted.Done.Count)));
        var staging = new PaperStaging(work, inMemory: 0);

        var paper = staging.Stage(new PaperFile("order.html", [.. "push one"u8]));

        Assert.Null(paper.Staged);
        Assert.Equal("push one"u8, paper.Bytes.AsSpan());
        Assert.Throws<IOException>(() => new PaperFolder(work).Put([paper]));
    }

    static void Make(string folder, IFileWork disk, string[] papers)
    {
        using var work = WorkFolder.Open(folder, "make", Around(folder, disk));
        var staging = new PaperStaging(work, inMemory: 20);
        new PaperFolder(work).Put([
            .. papers.Select((text, at) => staging.Stage(new PaperFile($"paper-{at}.html", [.. Encoding.UTF8.GetBytes(text)]))),
        ]);
    }

    string Copy()
    {
        var copy = _bench.PathOf("copy-" + Guid.NewGuid().ToString("N"));
        foreach (var file in Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(copy, Path.GetRelativePath(Folder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }

        return copy;
    }

    static string State(string folder) =>
        string.Join(
            '\n',
            Directory
                .EnumerateFiles(folder, "*", SearchOption.TopDirectoryOnly)
                .Order(StringComparer.Ordinal)
                .Select(file => $"{Path.GetFileName(file)}: {File.ReadAllText(file)}")
                .Append(File.ReadAllText(Path.Combine(folder, PaperManifest.Name)))
        );

    static IEnumerable<string> Hidden(string folder) =>
        Directory.EnumerateFiles(WorkFolder.InHidden(folder, "")).Select(file => Path.GetFileName(file)!).Where(name => name != "lock");

    static CommandEnvironment Around(string folder, IFileWork disk) =>
        new(TextWriter.Null, TextWriter.Null, Path.GetDirectoryName(folder)!, DateTimeOffset.UnixEpoch, Colour: false, Width: 100)
        {
            Disk = disk,
        };
}
