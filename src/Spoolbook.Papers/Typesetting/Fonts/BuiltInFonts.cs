using Spoolbook.Pdf.Fonts;

namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>The fonts built into this assembly, each read at its first use and then shared by all documents and threads.</summary>
static class BuiltInFonts
{
    static readonly Lazy<TrueTypeFont>[] Fonts = [.. Enum.GetValues<Face>().Select(face => new Lazy<TrueTypeFont>(() => Read(face)))];

    public static TrueTypeFont Get(Face face) => Fonts[(int)face].Value;

    static TrueTypeFont Read(Face face)
    {
        var name = $"Inter-{face}";
        using var stream = typeof(BuiltInFonts).Assembly.GetManifestResourceStream(name + ".ttf")
            ?? throw new InvalidOperationException($"The font {name} is not built into the assembly.");
        var file = new byte[stream.Length];
        stream.ReadExactly(file);
        return new TrueTypeFont(name, file);
    }
}
