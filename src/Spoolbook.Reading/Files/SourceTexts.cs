using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Files;

/// <summary>The lines a production was read from, to show beside findings.</summary>
public sealed class SourceTexts
{
    /// <summary>The most of a line that is shown, in characters.</summary>
    public const int MostShown = 200;

    readonly ImmutableDictionary<string, SourceFile> _files;

    internal SourceTexts(IEnumerable<SourceFile> files) => _files = files.ToImmutableDictionary(f => f.Name, StringComparer.Ordinal);

    /// <summary>No lines, for a production that was not read.</summary>
    public static SourceTexts Nothing { get; } = new([]);

    /// <summary>The files that opened, in order.</summary>
    public IEnumerable<string> Names => _files.Keys.Order(StringComparer.Ordinal);

    /// <summary>Lines in a file; 0 for one that did not open.</summary>
    public int LinesIn(string file) => _files.TryGetValue(file, out var source) ? source.LineCount : 0;

    /// <summary>A line without its end; null where there is none.</summary>
    public string? Line(string file, int line) =>
        _files.TryGetValue(file, out var source) && line >= 1 && line <= source.LineCount ? source.Line(line) : null;

    /// <summary>The line of a place, or as much around the place as fits; null where there is none.</summary>
    public Excerpt? Around(Place place)
    {
        if (Line(place.File, place.Line) is not { } line)
        {
            return null;
        }

        var from =
            line.Length <= MostShown
                ? 0
                : WholeLetters.At(line, Math.Clamp(place.Column - 1 - (MostShown / 4), 0, line.Length - MostShown));
        var text = line[from..WholeLetters.At(line, Math.Min(from + MostShown, line.Length))];
        var column = Math.Clamp(place.Column - from, 1, text.Length + 1);
        return new Excerpt(text, column, Math.Min(place.Length, text.Length + 1 - column));
    }
}
