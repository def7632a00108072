using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Spoolbook.Film.Tests.Reference;

/// <summary>The room's doc comments, by the compiler's names of their members.</summary>
sealed partial class DocComments
{
    readonly Dictionary<string, XElement> _members;

    DocComments(Dictionary<string, XElement> members) => _members = members;

    public IEnumerable<string> Names => _members.Keys;

    public static DocComments Of(string xmlFile) =>
        new(
            XDocument.Load(xmlFile).Descendants("member").ToDictionary(member => (string)member.Attribute("name")!, StringComparer.Ordinal)
        );

    /// <summary>A member's text under a heading, from its own comment or the one that it refers to.</summary>
    public IEnumerable<XElement> Parts(string name, string heading)
    {
        var member = _members[name];
        var borrowed = member
            .Elements("inheritdoc")
            .Where(pointer => (string?)pointer.Attribute("path") == "/" + heading)
            .SelectMany(pointer => Parts((string)pointer.Attribute("cref")!, heading));
        return member.Elements(heading).Concat(borrowed);
    }

    public string Summary(string name) => string.Join(' ', Parts(name, "summary").Select(Text));

    /// <summary>A comment as Markdown, on one line.</summary>
    public static string Text(XElement comment) => Blanks().Replace(string.Concat(comment.Nodes().Select(Text)), " ").Trim();

    static string Text(XNode node) =>
        node switch
        {
            XText text => text.Value,
            XElement { Name.LocalName: "c" } code => $"`{code.Value}`",
            XElement { Name.LocalName: "paramref" } parameter => $"*{(string?)parameter.Attribute("name")}*",
            XElement { Name.LocalName: "see" } see => $"`{DocNames.Short((string)see.Attribute("cref")!)}`",
            _ => throw new InvalidOperationException($"The reference page knows no such thing in a doc comment: {node}"),
        };

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
