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
        if (!File.Exists(path))
        {
            return null;
        }

        var real = RealPath.Of(path);
        if (Path.GetDirectoryName(real) != RealPath.Of(folder))
        {
            return new TemplateText(path, "") { Refused = Sentence.Of("common.template-file.link") };
        }

        return new FileInfo(real).Length > MostBytes
            ? new TemplateText(path, "") { Refused = Sentence.Of("common.template-file.too-long") }
            : new TemplateText(path, File.ReadAllText(real));
    }
}
