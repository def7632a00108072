using Spoolbook.Papers.Pages;
using Spoolbook.Reading.Files;

namespace Spoolbook;

/// <summary>A folder of templates of one's own. Nothing outside it is read, whatever a name or a link in it points at.</summary>
internal sealed class TemplateFolder(string folder) : ITemplateSource
{
    const long MostBytes = 4_000_000;

    public TemplateText? Find(string name)
    {
        // The engine asks for plain names only; a path would lead out of the folder.
        var path = Path.Combine(folder, Path.GetFileName(name));
        try
        {
            return File.Exists(path) ? Read(path) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refused(path, e is IOException ? "cannot be opened: see where its link leads" : "cannot be opened: you may not read it");
        }
    }

    TemplateText Read(string path)
    {
        var real = RealPath.Of(path);
        if (Path.GetDirectoryName(real) != RealPath.Of(folder))
        {
            return Refused(path, "is a link that leads out of the templates' folder");
        }

        if (OrdinaryFile.InsteadOf(real) is { } other)
        {
            return Refused(path, $"is {other} and no file");
        }

        return new FileInfo(real).Length > MostBytes
            ? Refused(path, "is longer than four million bytes")
            : new TemplateText(path, File.ReadAllText(real));
    }

    static TemplateText Refused(string path, string why) => new(path, "") { Refused = why };
}
