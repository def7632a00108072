using Spoolbook.Papers.Pages;

namespace Spoolbook.Fuzz.Targets;

/// <summary>Templates that somebody wrote, over the house's.</summary>
internal sealed class OwnTemplates(IReadOnlyDictionary<string, string> own) : ITemplateSource
{
    public TemplateText? Find(string name) => own.TryGetValue(name, out var text) ? new TemplateText("own/" + name, text) : null;

    /// <summary>With the house's below.</summary>
    public static ITemplateSource Over(params (string Name, string Text)[] own) =>
        new HouseTemplates(new OwnTemplates(own.DistinctBy(o => o.Name).ToDictionary(o => o.Name, o => o.Text, StringComparer.Ordinal)));
}
