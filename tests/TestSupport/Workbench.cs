namespace Spoolbook.TestSupport;

/// <summary>A folder to work in, deleted afterwards.</summary>
abstract class Workbench : IDisposable
{
    /// <summary>The day of making in every test.</summary>
    public static readonly DateTimeOffset Made = new(2026, 10, 5, 12, 0, 0, TimeSpan.Zero);

    protected Workbench() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "spoolbook-" + Guid.NewGuid().ToString("N"));

    public string PathOf(string name) => Path.Combine(Folder, name);

    /// <summary>A copy of a production to damage.</summary>
    public string CopyOf(string production, string name = "production")
    {
        foreach (var file in Repository.FilesOf(production))
        {
            var to = Path.Combine(Folder, name, Path.GetRelativePath(production, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }

        return PathOf(name);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
