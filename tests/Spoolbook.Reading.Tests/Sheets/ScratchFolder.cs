namespace Spoolbook.Reading.Tests.Sheets;

/// <summary>A folder that is deleted after the test.</summary>
sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("spoolbook").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
