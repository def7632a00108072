using System.Collections.Concurrent;

namespace Spoolbook.Papers.Pages;

/// <summary>The templates built into the program, overridden by another source's own.</summary>
/// <param name="own">A department's own files; the house's are used for what is missing.</param>
public sealed class HouseTemplates(ITemplateSource? own = null) : ITemplateSource
{
    const string Prefix = "templates/";

    static readonly ConcurrentDictionary<string, TemplateText?> Read = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public TemplateText? Find(string name) => own?.Find(name) ?? (IncludeFunction.IsPlainName(name) ? Read.GetOrAdd(name, Embedded) : null);

    /// <summary>The names of the house's templates, words files and style sheet.</summary>
    public static IEnumerable<string> Names =>
        typeof(HouseTemplates)
            .Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..])
            .Order(StringComparer.Ordinal);

    static TemplateText? Embedded(string name)
    {
        using var stream = typeof(HouseTemplates).Assembly.GetManifestResourceStream(Prefix + name);
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream);
        return new TemplateText(Prefix + name, reader.ReadToEnd());
    }
}
