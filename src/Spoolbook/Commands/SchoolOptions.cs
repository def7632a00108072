using System.CommandLine;
using System.Globalization;
using Spoolbook.Shipping;

namespace Spoolbook.Commands;

/// <summary>Arguments and options of the commands that are about a school's consignments.</summary>
internal static class SchoolOptions
{
    /// <summary>The folder that all productions are below.</summary>
    public static Argument<string> Folder(CommandEnvironment around)
    {
        var folder = new Argument<string>("folder") { Description = "The folder that the productions are in, at any depth." };
        folder.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<string>() is { } named && !Directory.Exists(Path.Combine(around.Folder, named)))
            {
                given.AddError($"there is no folder '{named}' here.");
            }
        });
        return folder;
    }

    /// <summary>Where consignments are kept.</summary>
    public static Option<string> Out()
    {
        var outTo = new Option<string>("--out")
        {
            Description = "Where consignments are kept, below the folder.",
            DefaultValueFactory = _ => ShipmentRecords.UsualFolder,
        };
        outTo.Validators.Add(given =>
        {
            if (ShipmentRecords.Objection(Plain(given.GetValueOrDefault<string>() ?? "")) is { } objection)
            {
                given.AddError(objection);
            }
        });
        return outTo;
    }

    /// <summary>A folder's name with forward slashes and none at its end.</summary>
    public static string Plain(string folder) => folder.Replace('\\', '/').TrimEnd('/');

    /// <summary>A day, as 2026-10-16.</summary>
    public static Option<string?> Day(string name, string description)
    {
        var day = new Option<string?>(name) { Description = description, HelpName = "date" };
        day.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<string?>() is { } text && DayOf(text) is null)
            {
                given.AddError($"'{text}' is no day: write it as 2026-10-16.");
            }
        });
        return day;
    }

    public static DateOnly? DayOf(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
