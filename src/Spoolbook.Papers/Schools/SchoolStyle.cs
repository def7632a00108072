using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Schools;

/// <summary>
/// A school's colours on its web pages: the rule of the head, and links. Only on a light background, as they would be
/// lost on a dark one.
/// </summary>
internal static class SchoolStyle
{
    public static string Write(School? school)
    {
        var colours = SchoolColours.Of(school);
        return colours.Length == 0
            ? ""
            : $$"""
                @media (prefers-color-scheme: light) {
                  :root { --accent: {{colours[^1]}}; }
                  header { border-bottom-color: {{colours[0]}}; }
                }

                """;
    }
}
