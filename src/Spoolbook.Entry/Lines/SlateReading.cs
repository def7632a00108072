using System.Collections.Immutable;

namespace Spoolbook.Entry.Lines;

/// <summary>Splits the name of a shot, <c>12B</c>, into its scene and its letter.</summary>
static class SlateReading
{
    /// <summary>What a name can mean: one reading where there is no doubt.</summary>
    /// <remarks>
    /// Known shots come first: 12AB may be shot B of scene 12A. Otherwise the figures are the scene and one letter after them
    /// the shot, as papers print them.
    /// </remarks>
    public static ImmutableArray<(string Scene, string? Shot)> Of(string name, LineContext context)
    {
        var known = Known(name, context, StringComparison.Ordinal);
        known = known.IsEmpty ? Known(name, context, StringComparison.OrdinalIgnoreCase) : known;
        if (!known.IsEmpty)
        {
            return known;
        }

        var figures = 0;
        while (figures < name.Length && char.IsAsciiDigit(name[figures]))
        {
            figures++;
        }

        var letters = figures;
        while (letters < name.Length && char.IsLetter(name[letters]))
        {
            letters++;
        }

        if (letters < name.Length)
        {
            return [(name, null), (name[..^1], name[^1..])];
        }

        return (figures, letters - figures) switch
        {
            (_, 0) or (0, _) => [(name, null)],
            (_, 1) when IsScene(name, context) && !IsScene(name[..figures], context) => [(name[..figures], name[figures..]), (name, null)],
            (_, 1) => [(name[..figures], name[figures..])],
            _ => [(name[..figures], name[figures..]), (name[..^1], name[^1..])],
        };
    }

    static ImmutableArray<(string Scene, string? Shot)> Known(string name, LineContext context, StringComparison comparison)
    {
        var known = ImmutableArray.CreateBuilder<(string Scene, string? Shot)>();
        foreach (var shot in context.Shots)
        {
            if (shot.Name.Equals(name, comparison))
            {
                known.Add((shot.Scene, shot.Shot));
            }
        }

        return known.ToImmutable();
    }

    static bool IsScene(string scene, LineContext context)
    {
        foreach (var shot in context.Shots)
        {
            if (shot.Scene == scene)
            {
                return true;
            }
        }

        return false;
    }
}
