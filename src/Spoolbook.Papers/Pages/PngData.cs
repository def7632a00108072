using System.Collections.Concurrent;
using Spoolbook.Pdf.Images;

namespace Spoolbook.Papers.Pages;

/// <summary>A PNG inside a page, as a data address.</summary>
static class PngData
{
    /// <summary>The most pixels a side.</summary>
    public const int MostPixels = 2000;

    const string Prefix = "data:image/png;base64,";
    const int MostLength = 400_000;

    // Every paper has the same logo in its head: read once, it is also one picture to the PDF.
    static readonly ConcurrentDictionary<string, Lazy<PngPicture?>> Read = new(StringComparer.Ordinal);

    public static string Address(ReadOnlySpan<byte> png) => Prefix + Convert.ToBase64String(png);

    /// <summary>The picture of such an address; null for another address, or an unreadable PNG.</summary>
    public static PngPicture? Picture(string address) =>
        address.StartsWith(Prefix, StringComparison.Ordinal) && address.Length <= MostLength
            ? Read.GetOrAdd(address, a => new Lazy<PngPicture?>(() => ReadOne(a))).Value
            : null;

    static PngPicture? ReadOne(string address)
    {
        try
        {
            return PngPicture.Read(Convert.FromBase64String(address[Prefix.Length..]), MostPixels);
        }
        catch (FormatException)
        {
            return null;
        }
    }
}
