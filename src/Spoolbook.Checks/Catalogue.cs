using System.Collections.Immutable;
using System.Reflection;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks;

/// <summary>The pages of every finding of every stage: `explain` prints them, and the reference is made from them.</summary>
public static class Catalogue
{
    static readonly Lazy<ImmutableSortedDictionary<string, CheckPage>> Pages = new(ReadPages);

    /// <summary>Every page, by the check's name.</summary>
    public static IEnumerable<CheckPage> All => Pages.Value.Values;

    /// <summary>The page of a check, or null.</summary>
    public static CheckPage? Page(string name) => Pages.Value.GetValueOrDefault(name);

    /// <summary>The closest name to a misspelt one, or the name that ends as written; null where there is none.</summary>
    public static string? Nearest(string name) =>
        Likeness.Nearest(name, Pages.Value.Keys)
        ?? Pages.Value.Keys.FirstOrDefault(known => known.EndsWith("/" + name, StringComparison.Ordinal));

    /// <summary>Checks with a word in their name or one-line summary, for a user who remembers only the word; at most eight.</summary>
    public static IReadOnlyList<string> Naming(string word) =>
        [
            .. Pages
                .Value.Values.Where(page => page.Name.Contains(word, StringComparison.OrdinalIgnoreCase))
                .Concat(Pages.Value.Values.Where(page => page.Summary.Contains(word, StringComparison.OrdinalIgnoreCase)))
                .Select(page => page.Name)
                .Distinct()
                .Take(8),
        ];

    static ImmutableSortedDictionary<string, CheckPage> ReadPages()
    {
        var assembly = typeof(Catalogue).Assembly;
        var pages =
            from resource in assembly.GetManifestResourceNames()
            where resource.EndsWith(".md", StringComparison.Ordinal)
            select CheckPage.Parse(TextOf(assembly, resource), resource.Replace('\\', '/'));
        return pages.ToImmutableSortedDictionary(page => page.Name, page => page, StringComparer.Ordinal);
    }

    static string TextOf(Assembly assembly, string resource)
    {
        using var reader = new StreamReader(assembly.GetManifestResourceStream(resource)!);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
