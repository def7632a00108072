using System.Globalization;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Files;

/// <summary>An opened file: its text, a fault that keeps it from being read, or both where the text can still be shown.</summary>
public sealed record FileText(string? Text, FileFault? Fault)
{
    public static FileText Of(string text) => new(text, null);

    /// <summary>A file that does not open or is not what it should be.</summary>
    public static FileText Unreadable(Sentence message, Sentence help) =>
        new(null, new FileFault(SheetChecks.UnreadableFile, message, help, 1, 1));

    /// <summary>A file longer than anybody types.</summary>
    public static FileText TooLarge(long bytes) =>
        new(
            null,
            new FileFault(
                SheetChecks.TooLarge,
                Sentence.Of(
                    "sheet/too-large.message",
                    ("length", (bytes / 1_000_000m).ToString("0.0", CultureInfo.InvariantCulture)),
                    ("most", MostBytes / 1_000_000)
                ),
                Sentence.Of("sheet/too-large.help"),
                1,
                1
            )
        );

    /// <summary>The longest file that is read, in bytes.</summary>
    public const int MostBytes = 5_000_000;
}
