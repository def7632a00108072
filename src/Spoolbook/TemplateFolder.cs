using Spoolbook.Papers.Pages;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;

namespace Spoolbook;

/// <summary>A folder of the user's own templates. Reads nothing outside it, wherever a name or a link points.</summary>
internal sealed class TemplateFolder(string folder) : ITemplateSource
{
    const long MostBytes = 4_000_000;

    public TemplateText? Find(string name)
    {
        // The engine asks only for plain names; a path could lead out of the folder.
        var path = Path.Combine(folder, Path.GetFileName(name));
        try
        {
            return File.Exists(path) ? Read(path) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refused(path, Sentence.Of(e is IOException ? "common.template-file.loop" : "common.template-file.unreadable"));
        }
    }

    TemplateText Read(string path)
    {
        var real = RealPath.Of(path);
        if (Path.GetDirectoryName(real) != RealPath.Of(folder))
        {
            return Refused(path, Sentence.Of("common.template-file.link"));
        }

        if (OrdinaryFile.InsteadOf(real) is { } other)
        {
            return Refused(path, Sentence.Of("common.template-file.no-file", ("what", other)));
        }

        return new FileInfo(real).Length > MostBytes
            ? Refused(path, Sentence.Of("common.template-file.too-long"))
            : new TemplateText(path, File.ReadAllText(real));
    }

    static TemplateText Refused(string path, Sentence why) => new(path, "") { Refused = why };
}
