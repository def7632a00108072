using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Findings;
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
                Sentence.Of("sheet/bad-colour.message.too-many", ("n", colours.Length)),
                colours[MostColours].Place,
                Sentence.Of("sheet/bad-colour.help.too-many")
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
                Sentence.Of("sheet/bad-picture.message.name", ("file", Quote.Short(file.Value))),
                file.Place,
                Sentence.Of("sheet/bad-picture.help.name")
            );
            return null;
        }

        var picture = map.Context.Pictures(file.Value);
        if (picture.Fault is { } fault)
        {
            map.Context.Findings.Add(
                SheetChecks.BadPicture,
                Sentence.Of("sheet/bad-picture.message", ("file", Quote.Short(file.Value)), ("fault", fault)),
                file.Place,
                picture.Help
            );
            return null;
        }

        return new Logo(file, picture.Bytes);
    }
}
