using Spoolbook.Fuzz.Mutations;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Schools;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Fuzz.Targets;

/// <summary>A school's logo, PNG or SVG, from the file into the head of a paper.</summary>
internal sealed class LogoTarget : ITarget
{
    public string Name => "logo";

    public IReadOnlyList<MutationKind> Grammar => [.. XmlKinds.All, .. PngKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        var file = input is [0x89, ..] ? "logo.png" : "logo.svg";
        var text = SmallShoot.Text.Replace("logo.svg", file, StringComparison.Ordinal);
        var found = Pipeline.Run(SmallShoot.With(text).With(file, input)).Found;
        var faults = new List<Finding>();
        var mark = SchoolMark.Draw(found.Books!.Production.School, PaperLanguage.House[0], faults);
        var outcome = faults.Select(f => string.Join(' ', f.Message.Split(' ').Where(w => w.All(char.IsLetter)).Take(12)));
        if (faults.Count > 0)
        {
            return outcome;
        }

        var press = new PagePress(found, PaperLanguage.House[0], "en", mark);
        var templates = new HouseTemplates();
        return press.Print(press.Jobs.First(j => j.Template == "kit-list.html"), templates, templates.Find("style.css")!.Text);
    }
}
