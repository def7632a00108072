using System.Text;
using Spoolbook.Pdf.Files;
using Spoolbook.Pdf.Fonts;
using Spoolbook.Pdf.Images;
using Spoolbook.Pdf.Structure;
using static Spoolbook.Pdf.Files.PdfSyntax;

namespace Spoolbook.Pdf.Documents;

/// <summary>
/// A tagged PDF 1.4, archival by PDF/A-1: fonts embedded, colours defined, no transparency, and everything drawn either
/// part of the structure or page furniture. Use one thread per document; threads may share fonts.
/// </summary>
public sealed class PdfDocument(DocumentIdentity identity)
{
    readonly List<PdfPage> _pages = [];
    readonly List<FontSubset> _fonts = [];
    readonly Dictionary<TrueTypeFont, int> _fontNumbers = [];
    readonly List<PngPicture> _images = [];
    readonly List<PagePlace> _names = [];
    readonly List<PagePlace> _outline = [];

    /// <summary>The root of the document's structure.</summary>
    public StructureElement Root { get; } = new("Document", null);

    public PdfPage AddPage(double width, double height)
    {
        var page = new PdfPage(this, _pages.Count, width, height);
        _pages.Add(page);
        return page;
    }

    internal void AddName(PagePlace place) => _names.Add(place);

    internal void AddOutline(PagePlace place) => _outline.Add(place);

    internal FontSubset Subset(TrueTypeFont font, out string resource)
    {
        if (!_fontNumbers.TryGetValue(font, out var number))
        {
            number = _fonts.Count;
            _fontNumbers[font] = number;
            _fonts.Add(new FontSubset(font));
        }
        resource = FontName(number);
        return _fonts[number];
    }

    /// <summary>The name by which pages draw a picture. The file holds each picture once, however often pages draw it.</summary>
    internal string ImageName(PngPicture picture)
    {
        var number = _images.IndexOf(picture);
        if (number < 0)
        {
            number = _images.Count;
            _images.Add(picture);
        }
        return "I" + Number(number);
    }

    public byte[] Save()
    {
        using var file = new ObjectFile();
        int catalog = file.Reserve(),
            pageTree = file.Reserve();
        var fonts = _fonts.Select(_ => file.Reserve()).ToList();
        var pages = _pages.Select(_ => file.Reserve()).ToList();

        // Keys of the parent tree: first the content of each page, in page order, then one for each link.
        var owners = _pages.Select(page => new ParentEntry(null, page.Owners)).ToList();
        var images =
            _images.Count == 0
                ? ""
                : "/XObject<<" + string.Concat(_images.Select(image => $"/{ImageName(image)} {Reference(WriteImage(file, image))}")) + ">>";
        var resources =
            "/Resources<</Font<<" + string.Concat(fonts.Select((font, i) => $"/{FontName(i)} {Reference(font)}")) + ">>" + images + ">>";
        for (var i = 0; i < _pages.Count; i++)
        {
            WritePage(file, pageTree, pages, i, resources, owners);
        }

        for (var i = 0; i < _fonts.Count; i++)
        {
            FontObjects.Write(file, fonts[i], _fonts[i], FontTag(i));
        }

        file.Write(pageTree, $"<</Type/Pages/Count {Number(pages.Count)}/Kids[{string.Join(' ', pages.Select(Reference))}]>>");

        Root.Attach();
        var structure = new StructureTree(file, pages).Write(Root, owners);
        var metadata = file.Reserve();
        file.WritePlainStream(metadata, "/Type/Metadata/Subtype/XML", Metadata.Write(identity));
        var profile = file.AddStream("/N 3", ColourProfile.Srgb());
        var navigation = new Navigation(file, pages).Entries(_outline, _names);
        file.Write(
            catalog,
            $"<</Type/Catalog/Pages {Reference(pageTree)}/Lang{Text(identity.Language)}"
                + $"/MarkInfo<</Marked true>>/StructTreeRoot {Reference(structure)}/Metadata {Reference(metadata)}"
                + $"/ViewerPreferences<</DisplayDocTitle true>>{navigation}"
                + $"/OutputIntents[<</Type/OutputIntent/S/GTS_PDFA1/OutputConditionIdentifier(sRGB)/Info(sRGB "
                + $"IEC61966-2.1)/DestOutputProfile {Reference(profile)}>>]>>"
        );
        var author = identity.Author.Length == 0 ? "" : $"/Author{Text(identity.Author)}";
        var information = file.Add(
            $"<</Title{Text(identity.Title)}{author}/Producer{Text(identity.Producer)}"
                + $"/CreationDate{Date(identity.Made)}/ModDate{Date(identity.Made)}>>"
        );
        return file.Finish(catalog, information);
    }

    void WritePage(ObjectFile file, int pageTree, List<int> pages, int number, string resources, List<ParentEntry> owners)
    {
        var page = _pages[number];
        var content = file.AddStream("", page.Content);
        var links = new StringBuilder();
        foreach (var link in page.Links)
        {
            var action = Navigation.Action(link.Address, _names) ?? $"/A<</S/URI/URI({UriText(link.Address)})>>";
            var annotation = file.Add(
                "<</Type/Annot/Subtype/Link/F 4/Border[0 0 0]"
                    + $"/Rect{Rectangle(link.Left, link.Bottom, link.Right, link.Top)}/StructParent {Number(owners.Count)}"
                    + $"/Contents{Text(link.Address)}{action}>>"
            );
            owners.Add(new ParentEntry(link.Element, null));
            link.Element.AddAnnotation(number, annotation);
            links.Append(Reference(annotation)).Append(' ');
        }
        // The tab key goes through links in the order of the structure.
        var annotations = links.Length == 0 ? "" : $"/Annots[{links}]/Tabs/S";
        file.Write(
            pages[number],
            $"<</Type/Page/Parent {Reference(pageTree)}/MediaBox{Rectangle(0, 0, page.Width, page.Height)}"
                + $"{resources}/Contents {Reference(content)}/StructParents {Number(number)}{annotations}>>"
        );
    }

    static int WriteImage(ObjectFile file, PngPicture image) =>
        file.AddStream(
            $"/Type/XObject/Subtype/Image/Width {Number(image.Width)}/Height {Number(image.Height)}/BitsPerComponent "
                + $"8/ColorSpace/{(image.IsGrey ? "DeviceGray" : "DeviceRGB")}",
            image.Pixels
        );

    static string FontName(int number) => "F" + Number(number);

    /// <summary>Six letters that mark a subset. They only have to differ within one file.</summary>
    static string FontTag(int number) => "SPOOL" + (char)('A' + number);

    /// <summary>An address with everything but plain ASCII percent-encoded, brackets and backslash too.</summary>
    static string UriText(string address)
    {
        var text = new StringBuilder();
        foreach (var b in Encoding.UTF8.GetBytes(address))
        {
            var plain = b is > 32 and < 127 && b is not ((byte)'(' or (byte)')' or (byte)'\\' or (byte)'<' or (byte)'>');
            if (plain)
            {
                text.Append((char)b);
            }
            else
            {
                text.Append('%').Append(Convert.ToHexString([b]));
            }
        }
        return text.ToString();
    }
}
