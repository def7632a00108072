using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>The school, with its logo.</summary>
static class SchoolReader
{
    const int MostColours = 2;

    public static School Read(MapReader map)
    {
        var colours = map.Values(SchoolKeys.Colours);
        if (colours.Length > MostColours)
        {
            map.Context.Findings.Add(
                SheetChecks.BadColour,
                $"`colours:` has {colours.Length} colours, and papers use two at most.",
                colours[MostColours].Place,
                "Keep the two that matter most: the first for the name, the second for links."
            );
        }

        return new School(map.Head)
        {
            Name = map.Value(SchoolKeys.Name),
            Logo = Logo(map),
            Colours = [.. colours.Take(MostColours)],
        };
    }

    static Logo? Logo(MapReader map)
    {
        if (map.Value(SchoolKeys.Logo) is not { } file)
        {
            return null;
        }

        if (
            !file.Value.EndsWith(".svg", StringComparison.OrdinalIgnoreCase)
            && !file.Value.EndsWith(".png", StringComparison.OrdinalIgnoreCase)
        )
        {
            map.Context.Findings.Add(
                SheetChecks.BadPicture,
                $"The logo `{Quote.Short(file.Value)}` is neither a PNG nor an SVG by its name.",
                file.Place,
                "Save it as .png or .svg, and write that name."
            );
            return null;
        }

        var picture = map.Context.Pictures(file.Value);
        if (picture.Fault is { } fault)
        {
            map.Context.Findings.Add(SheetChecks.BadPicture, $"The logo `{Quote.Short(file.Value)}` {fault}.", file.Place, picture.Help);
            return null;
        }

        return new Logo(file, picture.Bytes);
    }
}
