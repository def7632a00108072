using System.Text;
using Spoolbook.Pdf.Files;
using static Spoolbook.Pdf.Files.PdfSyntax;

namespace Spoolbook.Pdf.Documents;

/// <summary>What leads through a document: its outline, its named places, the labels of its pages, and where a link goes.</summary>
sealed class Navigation(ObjectFile file, IReadOnlyList<int> pages)
{
    /// <summary>The catalog's entries.</summary>
    public string Entries(IReadOnlyList<PagePlace> outline, IReadOnlyList<PagePlace> names)
    {
        var named = names
            .DistinctBy(name => name.Text)
            .OrderBy(name => name.Text, StringComparer.Ordinal)
            .Select(name => Bytes(name.Text) + Destination(name));
        // A single line says no more than the title. Pages are numbered as they are in their feet.
        return "/PageLabels<</Nums[0<</S/D>>]>>"
            + (names.Count == 0 ? "" : $"/Names<</Dests<</Names[{string.Concat(named)}]>>>>")
            + (outline.Count < 2 ? "" : $"/Outlines {Reference(Outline(outline))}");
    }

    /// <summary>What a link does; null for one to a place that is not in the file.</summary>
    public static string? Action(string address, IReadOnlyList<PagePlace> names)
    {
        if (address.StartsWith('#'))
        {
            return names.Any(name => name.Text == address[1..]) ? $"/A<</S/GoTo/D{Bytes(address[1..])}>>" : null;
        }

        var parts = address.Split('#');
        return address.Contains(':', StringComparison.Ordinal) ? null
            : parts[0].EndsWith(".pdf", StringComparison.Ordinal)
                ? $"/A<</S/GoToR/F{Bytes(parts[0])}/D{(parts.Length > 1 ? Bytes(parts[1]) : "[0/Fit]")}>>"
            : null;
    }

    int Outline(IReadOnlyList<PagePlace> outline)
    {
        var root = file.Reserve();
        var items = outline.Select(_ => file.Reserve()).ToList();
        var parents = outline.Select((place, i) => ParentOf(outline, i)).ToList();
        for (var i = 0; i < outline.Count; i++)
        {
            var (siblings, children) = (ChildrenOf(parents[i]), ChildrenOf(i));
            var at = siblings.IndexOf(i);
            file.Write(
                items[i],
                $"<</Title{Text(outline[i].Text)}/Parent {Reference(parents[i] < 0 ? root : items[parents[i]])}"
                    + (at > 0 ? $"/Prev {Reference(items[siblings[at - 1]])}" : "")
                    + (at < siblings.Count - 1 ? $"/Next {Reference(items[siblings[at + 1]])}" : "")
                    + Ends(children)
                    + $"/Dest{Destination(outline[i])}>>"
            );
        }
        file.Write(root, $"<</Type/Outlines{Ends(ChildrenOf(-1))}>>");
        return root;

        List<int> ChildrenOf(int parent) => [.. Enumerable.Range(0, outline.Count).Where(i => parents[i] == parent)];

        // All of it is open.
        int Below(int parent) => ChildrenOf(parent).Sum(child => 1 + Below(child));

        string Ends(List<int> children) =>
            children.Count == 0
                ? ""
                : $"/First {Reference(items[children[0]])}/Last {Reference(items[children[^1]])}"
                    + $"/Count {Number(children.Sum(child => 1 + Below(child)))}";
    }

    /// <summary>The last line before it that is less deep; -1 for none.</summary>
    static int ParentOf(IReadOnlyList<PagePlace> outline, int line)
    {
        var parent = line - 1;
        while (parent >= 0 && outline[parent].Level >= outline[line].Level)
        {
            parent--;
        }

        return parent;
    }

    string Destination(PagePlace place) => $"[{Reference(pages[place.Page])}/XYZ null {Number(place.Top)} null]";

    static string Bytes(string text) => $"<{Convert.ToHexString(Encoding.UTF8.GetBytes(text))}>";
}
