using System.Globalization;

namespace Spoolbook.Reading.Files;

/// <summary>
/// What came of opening a file: its text, a fault that keeps it from being read, or both where the text can still be shown.
/// </summary>
public sealed record FileText(string? Text, FileFault? Fault)
{
    /// <summary>A file that can be read.</summary>
    public static FileText Of(string text) => new(text, null);

    /// <summary>A file that cannot be opened or is not what it should be.</summary>
    public static FileText Unreadable(string message, string help) =>
        new(null, new FileFault(SheetChecks.UnreadableFile, message, help, 1, 1));

    /// <summary>A file longer than anybody writes by hand.</summary>
    public static FileText TooLarge(long bytes) =>
        new(
            null,
            new FileFault(
                SheetChecks.TooLarge,
                string.Create(CultureInfo.InvariantCulture,
                    $"The file is {bytes / 1_000_000m:0.0} MB long; Spoolbook reads files of up to {MostBytes / 1_000_000} MB."
                ),
                "See whether another file was saved under this name, or cut it into one file for each roll.",
                1,
                1
            )
        );

    /// <summary>The longest file that is read, in bytes.</summary>
    public const int MostBytes = 5_000_000;
}
