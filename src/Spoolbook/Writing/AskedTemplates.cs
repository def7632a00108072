using System.Collections.Concurrent;
using System.Text;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Writing;

/// <summary>A user's own templates, noting which were asked for and what was in them.</summary>
internal sealed class AskedTemplates(ITemplateSource own) : ITemplateSource
{
    readonly ConcurrentDictionary<string, string> _asked = new(StringComparer.Ordinal);

    /// <summary>A digest of each that was asked for, by name; <see cref="FileState.Nothing"/> for one that is not there.</summary>
    public IReadOnlyDictionary<string, string> Asked => _asked;

    public TemplateText? Find(string name)
    {
        var found = own.Find(name);
        _asked[name] = StateOf(found);
        return found;
    }

    /// <summary>Whether each is as it was.</summary>
    public bool AreStill(IReadOnlyDictionary<string, string> asked) => asked.All(a => StateOf(own.Find(a.Key)) == a.Value);

    // One that may not be read is not the same as itself.
    static string StateOf(TemplateText? template) =>
        template is null ? FileState.Nothing
        : template.Refused is not null ? ""
        : FileState.Of(Encoding.UTF8.GetBytes($"{template.File}\n{template.Text}"));
}
