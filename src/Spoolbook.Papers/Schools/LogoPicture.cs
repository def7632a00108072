using System.Xml;
using System.Xml.Linq;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pictures;
using Spoolbook.Pdf.Images;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Schools;

/// <summary>A logo as part of a picture: its elements, and the box around them.</summary>
sealed record LogoPicture(string Marks, Box Box)
{
    const string Svg = "http://www.w3.org/2000/svg";

    // What drawing programs add for their own use, which draws nothing.
    static readonly HashSet<string> Silent = ["version", "baseProfile", "id"];

    /// <summary>Reads a logo; null, with findings, where it has something that not every paper can draw.</summary>
    public static LogoPicture? Read(Logo logo, List<Finding> faults) => logo.IsSvg ? Drawn(logo, faults) : Pixels(logo, faults);

    static LogoPicture? Pixels(Logo logo, List<Finding> faults)
    {
        try
        {
            var picture = PngPicture.Read(logo.Bytes.AsSpan(), PngData.MostPixels);
            var (width, height) = (SvgWriter.N(picture.Width), SvgWriter.N(picture.Height));
            return new LogoPicture(
                $"<image x=\"0\" y=\"0\" width=\"{width}\" height=\"{height}\" href=\"{PngData.Address(logo.Bytes.AsSpan())}\"/>",
                new Box(0, 0, picture.Width, picture.Height)
            );
        }
        catch (FormatException wrong)
        {
            // The PDF room says it, which may see nobody and so has no words file: it passes through in English.
            faults.Add(PaperFaults.Logo(logo, logo.File.Place, Sentence.Plain(wrong.Message)));
            return null;
        }
    }

    static LogoPicture? Drawn(Logo logo, List<Finding> faults)
    {
        var before = faults.Count;
        if (Parsed(logo, faults) is not { } root)
        {
            return null;
        }

        void Report(XObject node, Sentence reason)
        {
            IXmlLineInfo at = node;
            faults.Add(PaperFaults.Logo(logo, new Place(logo.File.Value, at.LineNumber, at.LinePosition, 1), reason));
        }

        if (root.Name.LocalName != "svg")
        {
            Report(root, Sentence.Of("paper/logo.value.no-svg"));
            return null;
        }

        root.Attributes().Where(a => Silent.Contains(a.Name.LocalName)).Remove();
        root.Descendants().Where(e => e.Name.LocalName == "metadata" || e.Name.NamespaceName is not (Svg or "")).Remove();
        root.DescendantsAndSelf().Attributes().Where(a => !a.IsNamespaceDeclaration && a.Name.NamespaceName.Length > 0).Remove();
        PictureCheck.Check(root, Report);
        if (faults.Count > before || PictureSyntax.Numbers((string?)root.Attribute("viewBox") ?? "") is not { } box)
        {
            return null;
        }

        return new LogoPicture(
            string.Concat(root.Elements().Select(Clean).OfType<XElement>().Select(e => e.ToString(SaveOptions.DisableFormatting))),
            new Box(box[0], box[1], box[2], box[3])
        );
    }

    static XElement? Parsed(Logo logo, List<Finding> faults)
    {
        try
        {
            using var shallow = Reader(logo);
            if (XmlDepth.TooDeep(shallow, PictureCheck.MostDepth) is { } deep)
            {
                var place = new Place(logo.File.Value, deep.Line, deep.Column, 1);
                faults.Add(PaperFaults.Logo(logo, place, Sentence.Of("common.picture.too-deep", ("most", PictureCheck.MostDepth))));
                return null;
            }

            using var reader = Reader(logo);
            return XDocument.Load(reader, LoadOptions.SetLineInfo).Root;
        }
        catch (XmlException wrong)
        {
            var position = wrong.Message.LastIndexOf(" Line ", StringComparison.Ordinal);
            faults.Add(
                PaperFaults.Logo(
                    logo,
                    new Place(logo.File.Value, Math.Max(1, wrong.LineNumber), Math.Max(1, wrong.LinePosition), 1),
                    Sentence.Of(
                        "paper/logo.value.not-well-formed",
                        ("why", (position < 0 ? wrong.Message : wrong.Message[..position]).TrimEnd('.'))
                    )
                )
            );
            return null;
        }
    }

    static XmlReader Reader(Logo logo) =>
        XmlReader.Create(
            new MemoryStream([.. logo.Bytes]),
            new XmlReaderSettings
            {
                DtdProcessing = DtdProcessing.Prohibit,
                XmlResolver = null,
                CloseInput = true,
            }
        );

    /// <summary>The element alone, with ids of its own: a page has other pictures, and an id must be unique.</summary>
    static XElement? Clean(XElement element)
    {
        if (element.Name.LocalName is "title" or "desc")
        {
            return null;
        }

        // Without a namespace it takes that of the picture it is put into.
        return new XElement(
            element.Name.LocalName,
            element.Attributes().Where(a => !a.IsNamespaceDeclaration && a.Name.LocalName != "class").Select(Renamed),
            element
                .Nodes()
                .Select(n =>
                    n is XElement inner ? Clean(inner)
                    : n is XText text ? new XText(text.Value)
                    : (XNode?)null
                )
        );
    }

    static XAttribute Renamed(XAttribute attribute) =>
        attribute.Name.LocalName switch
        {
            "id" => new XAttribute("id", "school-" + attribute.Value),
            "clip-path" => new XAttribute("clip-path", attribute.Value.Replace("url(#", "url(#school-", StringComparison.Ordinal)),
            var name => new XAttribute(name, attribute.Value),
        };
}
