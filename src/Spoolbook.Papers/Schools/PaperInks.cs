using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Schools;

/// <summary>
/// The style sheet's colours on paper: lines like <c>--paper-title-rule: school;</c>. A colour that is too pale for
/// white paper is printed in a darker shade.
/// </summary>
internal static partial class PaperInks
{
    const string Names = "head-rule, title-rule, table-head, call-out";

    public static (PageInks Inks, IReadOnlyList<TemplateFault> Faults) Choose(TemplateText? sheet, School? school)
    {
        var inks = PageInks.Black;
        if (sheet is null || sheet.Refused is not null)
        {
            return (inks, []);
        }

        var faults = new List<TemplateFault>();
        var colours = SchoolColours.Of(school);
        var text = Comment()
            .Replace(sheet.Text.ReplaceLineEndings("\n"), comment => new string([.. comment.Value.Select(c => c == '\n' ? c : ' ')]));
        var lines = new TextLines(text);
        foreach (Match match in Property().Matches(text))
        {
            string name = match.Groups["name"].Value,
                value = match.Groups["value"].Value.Trim();
            if (!IsColour(value))
            {
                Fault(match.Groups["value"], Sentence.Of("paper/template.value.no-colour", ("value", value)));
            }

            var colour = Colour(value, [.. colours.Select(c => c.Rgb)]);
            switch (name)
            {
                case "head-rule":
                    inks = inks with { HeadRule = colour };
                    break;
                case "title-rule":
                    inks = inks with { TitleRule = colour };
                    break;
                case "table-head":
                    inks = inks with { TableHead = colour };
                    break;
                case "call-out":
                    inks = inks with { CallOut = colour };
                    break;
                case "heading":
                    inks = inks with { Heading = colour };
                    break;
                default:
                    Fault(
                        match.Groups["name"],
                        Sentence.Of("paper/template.value.nothing-to-colour", ("name", name), ("names", Names), ("last", "heading"))
                    );
                    break;
            }
        }
        return (inks, faults);

        void Fault(Group at, Sentence reason)
        {
            var (line, column) = lines.Place(at.Index);
            faults.Add(new TemplateFault(sheet.File, line, column, reason));
        }
    }

    static bool IsColour(string value) => value is "school" or "school-2" or "ink" || Hexadecimal().IsMatch(value);

    /// <summary>Null for black: for ink, and for a school without colours.</summary>
    static int? Colour(string value, int[] school) =>
        value switch
        {
            "school" => school is [var first, ..] ? first : null,
            "school-2" => school is [.., var last] ? last : null,
            _ when Hexadecimal().IsMatch(value) => SchoolColours
                .Readable(new InkColour(int.Parse(value.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)))
                .Rgb,
            _ => null,
        };

    [GeneratedRegex(@"/\*.*?(\*/|$)", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"--paper-(?<name>[a-z0-9-]*)\s*:\s*(?<value>[^;}]*)", RegexOptions.CultureInvariant)]
    private static partial Regex Property();

    [GeneratedRegex(@"^#[0-9a-fA-F]{6}$", RegexOptions.CultureInvariant)]
    private static partial Regex Hexadecimal();
}
