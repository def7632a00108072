using System.Globalization;
using System.Security;
using System.Text;

namespace Spoolbook.Pdf.Documents;

/// <summary>The XMP packet. It must match the information dictionary field by field, or PDF/A-1 refuses it.</summary>
static class Metadata
{
    // An extension schema must describe every property outside PDF/A-1's own schemas.
    const string AccessibilitySchema = """
        <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
        <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
        <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
        <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
        <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
        <pdfaProperty:name>part</pdfaProperty:name>
        <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
        <pdfaProperty:category>internal</pdfaProperty:category>
        <pdfaProperty:description>The part of ISO 14289 that the file conforms to</pdfaProperty:description>
        </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part></rdf:Description>

        """;

    public static byte[] Write(DocumentIdentity identity)
    {
        var made = identity.Made.UtcDateTime.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture) + "+00:00";
        var creator =
            identity.Author.Length == 0 ? "" : $"<dc:creator><rdf:Seq><rdf:li>{Escape(identity.Author)}</rdf:li></rdf:Seq></dc:creator>";
        var packet = $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Escape(identity.Title)}</rdf:li></rdf:Alt></dc:title>{creator}
            <dc:language><rdf:Bag><rdf:li>{Escape(identity.Language)}</rdf:li></rdf:Bag></dc:language>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
            <xmp:CreateDate>{made}</xmp:CreateDate><xmp:ModifyDate>{made}</xmp:ModifyDate>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><pdf:Producer>{Escape(
                identity.Producer
            )}</pdf:Producer></rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"><pdfaid:part>1</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance></rdf:Description>
            {(identity.Accessible ? AccessibilitySchema : "")}</rdf:RDF></x:xmpmeta>
            <?xpacket end="w"?>
            """;
        return Encoding.UTF8.GetBytes(packet.ReplaceLineEndings("\n"));
    }

    static string Escape(string text) => SecurityElement.Escape(text);
}
