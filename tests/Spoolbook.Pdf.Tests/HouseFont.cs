using Spoolbook.Pdf.Fonts;

namespace Spoolbook.Pdf.Tests;

/// <summary>A font of the house, built into the tests as into the papers.</summary>
static class HouseFont
{
    public static TrueTypeFont Read(string name)
    {
        using var stream = typeof(HouseFont).Assembly.GetManifestResourceStream(name + ".ttf")
            ?? throw new InvalidOperationException($"The font {name} is not built into the tests.");
        var file = new byte[stream.Length];
        stream.ReadExactly(file);
        return new TrueTypeFont(name, file);
    }
}
