using System.Text;
using Spoolbook.Checks.Running;

namespace Spoolbook.Checks;

/// <summary>All the checks and tolerances on one page of Markdown, made from the checks' own pages.</summary>
public static class CheckReference
{
    /// <summary>The page: an overview by group, each check in full without its examples, and the tolerances.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder(
            "# The checks\n\nWritten by `scripts/reference-checks` from the page of each check, which `spoolbook explain CHECK` prints "
                + "with examples of what is flagged and what is fine. A level is the house's: a production sets its own, and its own "
                + "tolerances, under `rules:`.\n\n"
        );
        var groups = CheckList.Groups.Select(g => (Name: g, Pages: Catalogue.All.Where(p => p.Group == g).ToArray())).ToArray();
        foreach (var (name, pages) in groups)
        {
            text.Append($"- **{name}** {string.Join(", ", pages.Select(p => $"[{What(p)}](#{Anchor(p)})"))}\n");
        }

        foreach (var (name, pages) in groups)
        {
            text.Append($"\n## {name}\n");
            foreach (var page in pages)
            {
                text.Append(
                    $"\n### {page.Name}\n\n*{page.Level}.* {page.Summary}\n\n{page.Description}\n\n{page.Why}\n\n[Examples]({page.File})\n"
                );
            }
        }

        text.Append(
            "\n## Tolerances\n\nHow far something may be out before a check speaks. A production writes its own figure under `rules: "
                + "tolerances:`, by the name.\n\n"
        );
        text.Append("| tolerance | usually | is | what is let pass | why this much | asked by |\n|---|---|---|---|---|---|\n");
        foreach (var tolerance in Tolerances.All)
        {
            var askers = Catalogue.All.Where(p => p.Names(tolerance)).Select(p => $"[{p.Name}](#{Anchor(p)})");
            text.Append(
                $"| `{tolerance.Name}` | {tolerance.UsualText} | {tolerance.Kind.Name} | {tolerance.Description} | {tolerance.Source} | "
                    + $"{string.Join(", ", askers)} |\n"
            );
        }

        return text.ToString();
    }

    static string What(CheckPage page) => page.Name[(page.Group.Length + 1)..];

    // Markdown renderers drop the slash from a heading's anchor.
    static string Anchor(CheckPage page) => page.Name.Replace("/", "", StringComparison.Ordinal);
}
