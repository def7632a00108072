using System.Collections.Concurrent;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Writing;

/// <summary>A production that is written to, and the table of takes that is taken in.</summary>
sealed class WritingBench : Workbench
{
    public const string Table = """
        Roll,Scene,Shot,Take,Mark,To,Lens,Stop,Filter,Remarks
        R01,1,A,1,,,,,,Gulls in shot
        R02,1,A,5,NG,60+10,10mm,8,,Sun gone

        """;

    ConcurrentDictionary<string, Lazy<object>>? _once;

    public WritingBench(string? production = null)
    {
        CopyOf(production ?? Repository.Sample);
        File.WriteAllText(PathOf("takes.csv"), Table);
    }

    public string Production => PathOf("production");

    public string Papers => Path.Combine(Production, "papers");

    /// <summary>Runs the command; null for the status of one that was killed.</summary>
    public (int? Status, string Out, string Error) Run(IFileWork disk, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(output, error, Folder, Made, Colour: false, Width: 100)
        {
            Disk = disk,
            Now = () => new DateTime(2026, 10, 5, 12, 0, 0),
            Once = (name, make) => _once is null ? make() : _once.GetOrAdd(name, _ => new Lazy<object>(make)).Value,
        };
        int? status;
        try
        {
            status = SpoolbookApp.Run(args, around);
        }
        catch (ProcessKilledException)
        {
            status = null;
        }

        return (disk is FaultyDisk { IsDead: true } ? null : status, output.ToString(), error.ToString());
    }

    public (int? Status, string Out, string Error) Run(params string[] args) => Run(new FaultyDisk(), args);

    /// <summary>From here on this bench and its copies print their papers once, since the production stays as it is.</summary>
    public void PrintOnce() => _once = new(StringComparer.Ordinal);

    /// <summary>Runs the command up to the first operation that is like that, at which it is killed.</summary>
    public void Kill(string operation, params string[] args)
    {
        using var twin = new WritingBench(this);
        var counted = new FaultyDisk();
        twin.Run(counted, args);
        var at = counted.Done.ToList().FindIndex(done => done == operation);
        Assert.True(at >= 0, $"No '{operation}' among {string.Join(", ", counted.Done)}");
        Assert.Null(Run(new FaultyDisk(Fault.Killed, at), args).Status);
    }

    /// <summary>A copy of another bench with all that is in it.</summary>
    public WritingBench(WritingBench other)
    {
        _once = other._once;
        foreach (var file in Directory.EnumerateFiles(other.Folder, "*", SearchOption.AllDirectories))
        {
            var to = PathOf(Path.GetRelativePath(other.Folder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            if (FileState.LinkTarget(file) is { } target)
            {
                File.CreateSymbolicLink(to, target);
            }
            else
            {
                File.Copy(file, to);
            }
        }
    }

    /// <summary>Every file that a person knows of, and the manifest, with a digest of each.</summary>
    public string State() =>
        string.Join(
            '\n',
            from file in Files()
            where !file.Contains(".spoolbook", StringComparison.Ordinal) || file.EndsWith("papers.sha256", StringComparison.Ordinal)
            select $"{file} {FileState.Of(PathOf(file))}"
        );

    /// <summary>What was left lying about: everything of Spoolbook's own but for the manifest and what is kept to be taken back.</summary>
    public IReadOnlyList<string> Leftovers()
    {
        var last = Path.Combine(Production, ".spoolbook", "last");
        var kept = File.Exists(last) ? File.ReadAllText(last) + " last" : "";
        return
        [
            .. Files()
                .Where(file =>
                    file.Contains(".spoolbook", StringComparison.Ordinal)
                    && Path.GetFileName(file) != "papers.sha256"
                    && !kept.Contains(Path.GetFileName(file), StringComparison.Ordinal)
                ),
        ];
    }

    public string Roll(string name) => File.ReadAllText(Path.Combine(Production, "rolls", name + ".yaml"));

    public void Rewrite(string file, string old, string text)
    {
        var path = Path.Combine(Production, file);
        Assert.Contains(old, File.ReadAllText(path), StringComparison.Ordinal);
        File.WriteAllText(path, File.ReadAllText(path).Replace(old, text, StringComparison.Ordinal));
    }

    IEnumerable<string> Files() =>
        Directory
            .EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Folder, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);
}
