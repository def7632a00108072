using System.Globalization;
using System.Text;
using Spoolbook.Writing;
using Xunit.Abstractions;

namespace Spoolbook.Acceptance.Writing;

/// <summary>
/// Every operation on files of every command that writes, killed and failed in turn. A new command is one more line in
/// <see cref="Commands"/>.
/// </summary>
public sealed class FaultTests(ITestOutputHelper output)
{
    const string Sunday = "production/sunday.yaml";

    static readonly string[] _amend = ["log", "R1: amend 1A/3 G", "--in", "production"];

    // The smaller of the small school's two labs.
    static readonly string[] _ship = ["ship", "--lab", "Brackwater Film Laboratory", "--sent", "2026-10-16", "production"];

    static readonly string[] _load = [.. "load R2 X/2 by noor 2026-02-10 17:40 dark head 4 --in production".Split(' ')];

    static readonly Dictionary<string, (string Production, Action<WritingBench> Before, string[] Command)> _commands = new(
        StringComparer.Ordinal
    )
    {
        ["make"] = (OneRoll, MakeAndChange, ["make", Sunday]),
        ["make for the first time"] = (OneRoll, _ => { }, ["make", Sunday]),
        ["import"] = (Repository.Sample, _ => { }, ["import", "takes.csv", "production"]),
        ["import --undo"] = (
            Repository.Sample,
            bench => bench.Run("import", "takes.csv", "production"),
            ["import", "--undo", "production"]
        ),
        ["log"] = (LoggedDay, ToOneRoll, _amend),
        ["log --undo"] = (
            LoggedDay,
            bench =>
            {
                ToOneRoll(bench);
                bench.Run(_amend);
            },
            ["log", "--undo", "--in", "production"]
        ),
        ["load"] = (LoggedDay, ToOneRoll, _load),
        ["unload"] = (
            LoggedDay,
            bench =>
            {
                ToOneRoll(bench);
                bench.Rewrite("rolls/r1.yaml", "unload: ", "# unload: ");
            },
            [.. "unload 2026-02-10 17:15 by noor subdued tail 2 --in production".Split(' ')]
        ),
        ["load into the list of a production in one file"] = (
            OneRoll,
            _ => { },
            [.. "load 2 X/2 2026-08-16 14:00 --anyway --in production/sunday.yaml".Split(' ')]
        ),
        ["check after a load cut short"] = (
            LoggedDay,
            bench =>
            {
                ToOneRoll(bench);
                bench.Kill("rename r2.yaml", _load);
            },
            ["check", "production"]
        ),
        ["ship"] = (Shipping.SchoolBench.Small, _ => { }, _ship),
        ["receive"] = (
            Shipping.SchoolBench.Small,
            bench => Assert.Equal(0, bench.Run(_ship).Status),
            [.. "receive --all --by ines production".Split(' ')]
        ),
        ["check after a ship cut short"] = (
            Shipping.SchoolBench.Small,
            bench => bench.Kill("rename manifest.json", _ship),
            ["check", "production"]
        ),
        ["schema --into"] = (Repository.Sample, _ => { }, ["schema", "--into", "production"]),
        ["new"] = (OneRoll, Empty, ["new", "--yes", "--title", "Monday", "production"]),
        ["check after a make cut short"] = (
            OneRoll,
            bench =>
            {
                MakeAndChange(bench);
                bench.Kill("rename index.html", "make", Sunday);
            },
            ["check", Sunday]
        ),
        ["check after an import cut short"] = (
            Repository.Sample,
            bench => bench.Kill("rename r02.yaml", "import", "takes.csv", "production"),
            ["check", "production"]
        ),
    };

    static string OneRoll => Path.Combine(TestFolders.Clean, "hand-held-one-roll");

    static string LoggedDay => Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "Logging", "day");

    public static TheoryData<string> Commands => [.. _commands.Keys];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Whatever_operation_is_killed_or_fails_the_next_command_finds_the_old_files_or_the_new_ones(string named)
    {
        var (production, prepare, command) = _commands[named];
        using var bench = new WritingBench(production);
        prepare(bench);
        using var unharmed = new WritingBench(bench);
        var counted = new FaultyDisk();
        Assert.Equal(0, unharmed.Run(counted, command).Status);
        // What is half done before the command is as old as what the next one makes of it.
        using var untouched = new WritingBench(bench);
        var asBefore = untouched.Run("check", command[^1]).Status!.Value;
        var (old, made, operations) = (untouched.State(), unharmed.State(), counted.Done.Count);
        // What was written with `--anyway` brings an error of its own.
        using var finished = new WritingBench(unharmed);
        var asMade = finished.Run("check", command[^1]).Status!.Value;

        var others = new List<string>();
        output.WriteLine($"{named}: {operations} operations");
        output.WriteLine("            old  new  journal, then old  journal, then new  others");
        foreach (var fault in (Fault[])[Fault.Killed, Fault.Failed, Fault.Failing])
        {
            var found = Enumerable
                .Range(0, operations)
                .AsParallel()
                .Select(at => (Outcome: Outcome(bench, command, fault, at, (old, asBefore), (made, asMade)), At: at))
                .ToList();
            others.AddRange(
                found.Where(f => !_good.Contains(f.Outcome)).Select(f => $"{named}, {fault} at {f.At} ({counted.Done[f.At]}): {f.Outcome}")
            );
            var line = new StringBuilder(fault.ToString().PadRight(12));
            foreach (var (good, width) in _good.Zip((int[])[3, 5, 19, 19]))
            {
                line.Append(found.Count(f => f.Outcome == good).ToString(CultureInfo.InvariantCulture).PadLeft(width));
            }

            output.WriteLine(
                line.Append(found.Count(f => !_good.Contains(f.Outcome)).ToString(CultureInfo.InvariantCulture).PadLeft(8)).ToString()
            );
        }

        Assert.True(others.Count == 0, string.Join("\n", others.Take(5)));
    }

    [Fact]
    public void A_ship_that_is_killed_at_any_operation_and_run_again_has_sent_each_can_once()
    {
        using var bench = new WritingBench(Shipping.SchoolBench.Small);
        using var unharmed = new WritingBench(bench);
        var counted = new FaultyDisk();
        Assert.Equal(0, unharmed.Run(counted, _ship).Status);
        var made = unharmed.State();

        Assert.All(Enumerable.Range(0, counted.Done.Count), at =>
        {
            using var copy = new WritingBench(bench);
            copy.Run(new FaultyDisk(Fault.Killed, at), _ship);
            copy.Run(_ship);
            Assert.Equal(made, copy.State());
        });
    }

    static readonly string[] _good = ["old", "new", "journal, then old", "journal, then new"];

    static string Outcome(
        WritingBench bench,
        string[] command,
        Fault fault,
        int at,
        (string State, int Check) old,
        (string State, int Check) made
    )
    {
        using var copy = new WritingBench(bench);
        var (status, _, _) = copy.Run(new FaultyDisk(fault, at), command);
        var journal = Journals(copy) ? "journal, then " : "";
        var next = copy.Run("check", command[^1]);
        var state = copy.State();
        // Where nothing had begun there is nothing to check afterwards either: no folder and an empty one are both refused.
        var refused = (state == old.State && old.Check != 0) || (state == made.State && made.Check != 0);
        return next.Status != 0 && !refused ? $"the next command ends with {next.Status}: {next.Error}"
            : Journals(copy) ? "a journal that stays"
            : copy.Leftovers().Where(f => !f.EndsWith("/lock", StringComparison.Ordinal)).ToList() is { Count: > 0 } left
                ? $"left behind: {string.Join(", ", left)}"
            : state == made.State ? journal + "new"
            : status == 0 ? "success, and not the new files"
            : state == old.State ? journal + "old"
            : "neither the old files nor the new ones";
    }

    static bool Journals(WritingBench bench) =>
        ((string[])[bench.Production, bench.Papers, Path.Combine(bench.Production, "schemas")]).Any(folder =>
            File.Exists(WorkFolder.InHidden(folder, WorkFolder.JournalName))
        );

    // What a line does to the disk it does in the smallest production with a file for each roll.
    static void ToOneRoll(WritingBench bench)
    {
        File.Delete(Path.Combine(bench.Production, "rolls", "r2.yaml"));
        File.Delete(Path.Combine(bench.Production, "rolls", "r3.yaml"));
    }

    static void Empty(WritingBench bench) => File.Delete(bench.PathOf(Sunday));

    // Papers change; one of them a person has changed too, one is a link, and one is of a roll that is gone.
    static void MakeAndChange(WritingBench bench)
    {
        Assert.Equal(0, bench.Run("make", Sunday).Status);
        bench.Rewrite("sunday.yaml", "title: ", "title: Another ");
        File.AppendAllText(Path.Combine(bench.Papers, "wrap-summary.html"), "<!-- mine -->");
        File.Move(Path.Combine(bench.Papers, "footage.xlsx"), bench.PathOf("footage.xlsx"));
        File.CreateSymbolicLink(Path.Combine(bench.Papers, "footage.xlsx"), "../../footage.xlsx");
        File.WriteAllText(Path.Combine(bench.Papers, "camera-report-R99.pdf"), "gone");
        File.AppendAllText(Path.Combine(bench.Papers, PaperManifest.Name), $"{FileState.Of("gone"u8)}  camera-report-R99.pdf\n");
    }
}
