using System.Globalization;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Faults;

/// <summary>Faults in printing, as findings.</summary>
internal static class PaperFaults
{
    public static Finding Template(TemplateFault fault) =>
        new(
            PaperChecks.Template,
            Level.Error,
            "The template cannot be printed: " + fault.Reason + ".",
            new Place(fault.File, fault.Line, fault.Column, 1)
        )
        {
            Help = "Mend the template, or take your own copy away so that the house's is used.",
        };

    public static Finding Logo(Logo logo, Place place, string reason) =>
        new(PaperChecks.Logo, Level.Error, $"The logo {logo.File.Value} cannot be drawn: {reason}.", place)
        {
            Help = logo.IsSvg
                ? "Save it as a plain SVG of shapes and paths, with fill and stroke as attributes; or save it as a PNG."
                : "Open it in a program for pictures and save it as a PNG once more, with some 600 pixels a side.",
        };

    public static Finding MissingWord(string key, string language) =>
        new(
            PaperChecks.Template,
            Level.Error,
            $"The words file of the language '{language}' has no '{key}'.",
            new Place($"words.{language}.txt", 1, 1, 1)
        )
        {
            Help = $"Add a line: {key} = …",
        };

    public static Finding UnfitWord(string key, string reason, string language) =>
        new(
            PaperChecks.Words,
            Level.Error,
            $"The workbook cannot use the words `{key}` of the language '{language}': {reason}.",
            new Place($"words.{language}.txt", 1, 1, 1)
        )
        {
            Help = "Write another text there, or take the line away so that the house's is used.",
        };

    public static Finding NoLanguage(string language) =>
        new(
            PaperChecks.Language,
            Level.Warning,
            $"There is no words file for the language '{language}', so the papers are in English.",
            new Place("production.yaml", 1, 1, 1)
        )
        {
            Help = $"Copy words.en.txt to words.{language}.txt in your templates folder and translate it, or write language: en or de.",
        };

    public static Finding Untranslated(string language, int count, string which) =>
        new(
            PaperChecks.Language,
            Level.Warning,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The words file of the language '{language}' lacks {count} of the words that papers use, so they stand in English: "
                    + $"{which}."
            ),
            new Place("production.yaml", 1, 1, 1)
        )
        {
            Help =
                $"Write them into a words.{language}.txt of your own: it needs only the lines that the house's lacks or that you want "
                + $"otherwise.",
        };

    public static Finding NoSuchLabel(Located<int> start, int most) =>
        new(
            PaperChecks.NoSuchLabel,
            Level.Warning,
            $"The can labels are to start at label {start.Value}, and the sheet has {most}: they start at the first.",
            start.Place
        )
        {
            Help = $"Write a number from 1 to {most}, or name the sheet that you have with sheet: cut, a4-8 or letter-6.",
        };

    public static Finding Overflow(string paper, PageWarning warning) =>
        new(
            PaperChecks.DoesNotFit,
            Level.Warning,
            $"A label holds more than fits in {paper}, even in small letters, near “{warning.Near}”: its end is cut off.",
            new Place(warning.Place.File, warning.Place.Line, warning.Place.Column, 1)
        )
        {
            Help = "Shorten the names on it, the roll's first, or print on a sheet with larger labels.",
        };
}
