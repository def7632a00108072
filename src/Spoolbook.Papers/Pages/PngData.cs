using System.Collections.Concurrent;
using Spoolbook.Pdf.Images;

namespace Spoolbook.Papers.Pages;

/// <summary>A PNG that stands in a page itself, as an address that holds its data.</summary>
static class PngData
{
    /// <summary>The most pixels a side.</summary>
    public const int MostPixels = 2000;

    const string Prefix = "data:image/png;base64,";
    const int MostLength = 400_000;

    // The same logo stands in the head of every paper: it is read once, and so is one picture to the PDF too.
    static readonly ConcurrentDictionary<string, Lazy<PngPicture?>> Read = new(StringComparer.Ordinal);

    public static string Address(ReadOnlySpan<byte> png) => Prefix + Convert.ToBase64String(png);

    /// <summary>The picture behind such an address; null where it is no such address, or no PNG that can be read.</summary>
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
