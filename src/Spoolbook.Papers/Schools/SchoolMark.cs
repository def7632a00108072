using System.Collections.Immutable;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Schools;

/// <summary>The school in the head of a paper: its logo, its name, and a rule in its colours.</summary>
static class SchoolMark
{
    const double Height = 30,
        MostLogoWidth = 84,
        Gap = 7,
        MostTextWidth = 150,
        LineHeight = 10.5;
    const int MostLines = 2;

    /// <summary>The picture as an SVG element; empty where there is nothing to show.</summary>
    public static string Draw(School? school, Translations words, List<Finding> faults)
    {
        var logo = school?.Logo is { } file ? LogoPicture.Read(file, faults) : null;
        var name = school?.Name?.Value.Trim() ?? "";
        if (school is null || (logo is null && name.Length == 0))
        {
            return "";
        }

        var svg = new SvgWriter();
        var right = logo is null ? 0 : Logo(svg, logo);
        if (name.Length > 0)
        {
            right = Name(svg, name, [.. SchoolColours.Of(school).Select(c => c.ToString())], right == 0 ? 0 : right + Gap);
        }

        return svg.Finish(right, Height, name.Length > 0 ? name : words["school-logo"], "", fromLeft: true);
    }

    static double Logo(SvgWriter svg, LogoPicture logo)
    {
        var scale = Math.Min(Height / logo.Box.Height, MostLogoWidth / logo.Box.Width);
        var (width, height) = (logo.Box.Width * scale, logo.Box.Height * scale);
        svg.Placed(logo.Marks, -logo.Box.X * scale, ((Height - height) / 2) - (logo.Box.Y * scale), scale);
        return width;
    }

    static double Name(SvgWriter svg, string name, ImmutableArray<string> colours, double left)
    {
        // A long name is set smaller rather than cut off, and as a last resort wider.
        var (lines, size) = (
            from tried in (double[])[9.5, 8.5, 7.5, 7]
            let broken = Broken(name, tried)
            where broken.Count <= MostLines && broken.All(l => Width(l, tried) <= MostTextWidth)
            select (broken, tried)
        ).FirstOrDefault((InHalves(name), 7));
        var width = lines.Max(l => Width(l, size));
        var top = (Height - 4 - (lines.Count * LineHeight)) / 2;
        for (var i = 0; i < lines.Count; i++)
        {
            var ink = colours is [var first, ..] ? first : SvgWriter.Ink;
            svg.Coloured(left, top + (i * LineHeight) + 8.5, lines[i], size, ink);
        }

        if (colours is [var rule, ..])
        {
            var turn = colours.Length > 1 ? width * 2 / 3 : width;
            svg.Rect(new Box(left, Height - 3, turn, 2), rule, "none");
            if (colours is [_, var end])
            {
                svg.Rect(new Box(left + turn, Height - 3, width - turn, 2), end, "none");
            }
        }

        return left + width;
    }

    static List<string> Broken(string name, double size)
    {
        var lines = new List<string>();
        foreach (var word in name.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && Width(lines[^1] + " " + word, size) <= MostTextWidth)
            {
                lines[^1] += " " + word;
            }
            else
            {
                lines.Add(word);
            }
        }

        return lines;
    }

    static List<string> InHalves(string name)
    {
        var middle = name.IndexOf(' ', name.Length / 2);
        return middle < 0 ? [name] : [name[..middle], name[(middle + 1)..]];
    }

    static double Width(string text, double size) => TextMeasure.Width(text, Face.SemiBold, size, tabular: true);
}
