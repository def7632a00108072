using System.Text;
using Spoolbook.Pdf.Files;
using static Spoolbook.Pdf.Files.PdfSyntax;

namespace Spoolbook.Pdf.Structure;

/// <summary>Writes the structure elements, and the way back from a page's content to them.</summary>
sealed class StructureTree(ObjectFile file, IReadOnlyList<int> pageObjects)
{
    int _root;

    /// <summary>The object of the tree's root. <paramref name="owners"/> has the element or elements of each key.</summary>
    public int Write(StructureElement document, IReadOnlyList<ParentEntry> owners)
    {
        _root = file.Reserve();
        NumberAll(document);
        WriteAll(document);

        var parents = new StringBuilder();
        for (var key = 0; key < owners.Count; key++)
        {
            var value = owners[key].Single is { } one
                ? Reference(one.ObjectNumber)
                : "[" + string.Join(' ', owners[key].ByContent!.Select(owner => Reference(owner.ObjectNumber))) + "]";
            parents.Append(Number(key)).Append(' ').Append(value).Append('\n');
        }
        var parentTree = file.Add($"<</Nums[{parents}]>>");
        file.Write(
            _root,
            $"<</Type/StructTreeRoot/K {Reference(document.ObjectNumber)}"
                + $"/ParentTree {Reference(parentTree)}/ParentTreeNextKey {Number(owners.Count)}>>"
        );
        return _root;
    }

    void NumberAll(StructureElement element)
    {
        element.ObjectNumber = file.Reserve();
        foreach (var child in element.Children)
        {
            if (child.Element is { } inner)
            {
                NumberAll(inner);
            }
        }
    }

    void WriteAll(StructureElement element)
    {
        var home = element.Children.FirstOrDefault(c => c.Kind != ChildKind.Element, new(null, -1, 0, ChildKind.Content)).Page;
        var body = new StringBuilder("<</S/").Append(element.Tag);
        body.Append("/P ").Append(Reference(element.Parent?.ObjectNumber ?? _root));
        if (home >= 0)
        {
            body.Append("/Pg ").Append(Reference(pageObjects[home]));
        }

        if (element.Alternative is { } words)
        {
            body.Append("/Alt").Append(Text(words));
        }

        body.Append(Attributes(element));
        if (element.Children.Count > 0)
        {
            body.Append("/K[").AppendJoin(' ', element.Children.Select(child => Child(child, home))).Append(']');
        }
        file.Write(element.ObjectNumber, body.Append(">>").ToString());

        foreach (var child in element.Children)
        {
            if (child.Element is { } inner)
            {
                WriteAll(inner);
            }
        }
    }

    string Child(StructureChild child, int home) =>
        child.Kind switch
        {
            ChildKind.Element => Reference(child.Element!.ObjectNumber),
            ChildKind.Annotation => $"<</Type/OBJR/Pg {Reference(pageObjects[child.Page])}/Obj {Reference(child.Number)}>>",
            _ when child.Page == home => Number(child.Number),
            _ => $"<</Type/MCR/Pg {Reference(pageObjects[child.Page])}/MCID {Number(child.Number)}>>",
        };

    static string Attributes(StructureElement element)
    {
        if (element.Bounds is { } b)
        {
            return $"/A<</O/Layout/Placement/Block/BBox{Rectangle(b.Left, b.Bottom, b.Right, b.Top)}>>";
        }
        if (element.Tag == "L")
        {
            return $"/A<</O/List/ListNumbering/{(element.Numbered ? "Decimal" : "None")}>>";
        }

        var scope = element.Scope is { } heads ? $"/Scope/{heads}" : "";
        var columns = element.ColumnSpan > 1 ? $"/ColSpan {Number(element.ColumnSpan)}" : "";
        var rows = element.RowSpan > 1 ? $"/RowSpan {Number(element.RowSpan)}" : "";
        return scope.Length + columns.Length + rows.Length == 0 ? "" : $"/A<</O/Table{scope}{columns}{rows}>>";
    }
}
