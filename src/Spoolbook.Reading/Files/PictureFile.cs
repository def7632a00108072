using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Reading.Files;

/// <summary>An opened picture that a sheet names: its bytes, or why it cannot be used.</summary>
public sealed record PictureFile(ImmutableArray<byte> Bytes, Sentence? Fault, Sentence Help)
{
    /// <summary>The longest picture that is read, in bytes: every page carries it in its head.</summary>
    public const int MostBytes = 200_000;

    public static PictureFile Of(ReadOnlySpan<byte> bytes) =>
        bytes.Length > MostBytes ? TooLarge(bytes.Length) : new([.. bytes], null, Sentence.Plain(""));

    public static PictureFile Missing { get; } =
        new([], Sentence.Of("sheet/bad-picture.value.missing"), Sentence.Of("sheet/bad-picture.help.missing"));

    /// <summary>A picture outside the production's folder.</summary>
    public static PictureFile Outside { get; } =
        new([], Sentence.Of("sheet/bad-picture.value.outside"), Sentence.Of("sheet/bad-picture.help.outside"));

    /// <summary>Something else than a file under a picture's name.</summary>
    /// <param name="what">What it is: <c>a pipe</c>.</param>
    public static PictureFile NoFile(string what) =>
        new([], Sentence.Of("sheet/bad-picture.value.no-file", ("what", what)), Sentence.Of("sheet/bad-picture.help.no-file"));

    public static PictureFile TooLarge(long bytes) =>
        new(
            [],
            Sentence.Of(
                "sheet/bad-picture.value.too-large",
                ("length", (bytes / 1000m).ToString("0", CultureInfo.InvariantCulture)),
                ("most", MostBytes / 1000)
            ),
            Sentence.Of("sheet/bad-picture.help.too-large")
        );

    /// <summary>Whether a path stays inside its folder, on any system.</summary>
    public static bool StaysInside(string path) =>
        path.Length > 0
        && !path.Contains(':', StringComparison.Ordinal)
        && TextCharacters.AreAllowed(path)
        && path.Split('/', '\\').All(step => step is not ("" or "." or ".."));
}
