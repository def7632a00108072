using Spoolbook.Film;
using Spoolbook.Film.Scans;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.LabOrders;

/// <summary>What the lab is to deliver of one consignment.</summary>
/// <param name="Picture">Raster, bits, log or not, and the type of file.</param>
/// <param name="Rate">The speed of the files.</param>
/// <param name="Framing">How much of the frame, and how far beyond it.</param>
/// <param name="Takes">Whole rolls, or which takes.</param>
/// <param name="Naming">The names of files.</param>
/// <param name="Drive">The drive.</param>
/// <param name="Sound">What becomes of the sound.</param>
/// <param name="SoundRatio">How sound follows the picture; empty where it stays as it is.</param>
/// <param name="Files">What all of it comes to.</param>
/// <param name="Frame">
/// Megabytes of a frame, and that the type of file is open where the record says the size alone; empty where unknown.
/// </param>
public sealed record DeliverFacts(
    string Picture,
    string Rate,
    string Framing,
    string Takes,
    string Naming,
    string Drive,
    string Sound,
    string SoundRatio,
    string Files,
    string Frame
)
{
    internal static DeliverFacts? Of(DeliveryBook book, Sending sending, PaperFormat format)
    {
        if (book.Ordered is not { } ordered)
        {
            return null;
        }

        var (words, rolls) = (format.Words, book.Of(sending));
        var missing = words["not-stated"];
        return new DeliverFacts(
            Listed(
                format,
                ordered.Raster?.Value.ToString(),
                ordered.Bits is { } bits ? words.Fill("deliver-bits", ("bits", PaperFormat.Number(bits.Value))) : null,
                ordered.IsLog is { } log ? words[log.Value ? "deliver-log" : "deliver-not-log"] : null,
                ordered.FileType?.Value
            ),
            ordered.Rate is { } rate ? words.Fill("deliver-rate-of", ("speed", format.AsWritten(rate.Value))) : missing,
            Listed(
                format,
                ordered.Framing?.Value,
                ordered.Overscan is { } overscan ? words.Fill("deliver-overscan", ("percent", format.Percent(overscan.Value))) : null
            ),
            ordered.Takes is { } takes ? words["deliver-takes-" + takes.Value.ToString().ToLowerInvariant()] : missing,
            ordered.Naming?.Value ?? missing,
            ordered.Drive is { } drive
                ? drive.Value.Sign == 0
                    ? words["deliver-no-drive"]
                    : format.Quantity(drive.Value) + "\u00A0GB"
                : missing,
            ordered.Sound is { } sound ? words["deliver-sound-" + sound.Value.ToString().ToLowerInvariant()] : missing,
            string.Join("; ", book.Changes(rolls).Select(change => Following(change, format))),
            FilesOf(book.Files(rolls), format),
            FrameOf(book, format)
        );
    }

    // A size that the record says is that of a type of file; one that follows from raster and bits is not compressed.
    static string FrameOf(DeliveryBook book, PaperFormat format) =>
        book.FrameSize is not { } size ? ""
        : format.Words.Fill("deliver-frame", ("size", format.Megabytes(size / ScannedFrame.Megabyte))) is var each
        && book.Ordered is { FrameSize: not null, FileType: null }
            ? each + ", " + format.Words["deliver-no-type"]
        : each;

    /// <summary>Frames, running time and gigabytes: <c>4000 frames · 2:47 · 50.3 GB</c>.</summary>
    /// <param name="tenths">Tenths of a gigabyte, where they are part of a printed sum.</param>
    internal static string FilesOf(ScanSum files, PaperFormat format, long? tenths = null) =>
        string.Join(
            " · ",
            new[]
            {
                format.Count(files.Frames, "frame"),
                PaperFormat.Clock(files.Seconds),
                (tenths is { } rounded ? new Ratio(rounded, 10) : files.Gigabytes) is { } gigabytes ? format.Gigabytes(gigabytes) : "",
            }.Where(part => part.Length > 0)
        );

    static string Following(RateChange change, PaperFormat format) =>
        format.Words.Fill(
            change.Percent.Sign > 0 ? "deliver-sound-faster" : "deliver-sound-slower",
            ("camera", format.AsWritten(change.Camera)),
            ("ratio", change.Ratio.ToString()),
            ("percent", format.Precisely(change.Percent.Sign > 0 ? change.Percent : -change.Percent))
        );

    static string Listed(PaperFormat format, params string?[] parts) =>
        parts.OfType<string>().ToArray() is { Length: > 0 } written ? string.Join(", ", written) : format.Words["not-stated"];
}
