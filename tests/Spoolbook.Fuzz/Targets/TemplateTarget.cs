using System.Text;
using Spoolbook.Fuzz.Mutations;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Schools;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Fuzz.Targets;

/// <summary>Templates of somebody's own, through the engine and onto page and PDF; a bundle says which they are.</summary>
internal sealed class TemplateTarget : ITarget
{
    const string Usual = "kit-list.html";

    static readonly CheckedProduction _shoot = Pipeline.Run(SmallShoot.Files).Found;
    static readonly PagePress _press = new(_shoot, PaperLanguage.House[0], "en");

    public string Name => "template";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. XmlKinds.All, .. TemplateKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        var own = Bundle.Open(input).Select(f => (Name: f.Name.Length == 0 ? Usual : f.Name, Text: Text(f.Bytes))).ToArray();
        var templates = OwnTemplates.Over(own);
        var style = templates.Find("style.css")!;
        _ = StyleSheetCheck.Faults(style).Select(PaperFaults.Template).ToList();
        _ = PaperInks.Choose(style, _shoot.Books!.Production.School);
        var job = _press.Jobs.FirstOrDefault(j => own.Any(o => o.Name == j.Template)) ?? _press.Jobs.First(j => j.Template == Usual);
        return [.. _press.Print(job, templates, style.Text)];
    }

    // As the command reads a template: whatever its bytes are.
    static string Text(byte[] bytes)
    {
        using var reader = new StreamReader(new MemoryStream(bytes), Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
