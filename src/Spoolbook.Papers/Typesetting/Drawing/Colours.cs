namespace Spoolbook.Papers.Typesetting.Drawing;

/// <summary>Ink and greys. A paper must read the same from a black-only office printer.</summary>
static class Colours
{
    public const int Ink = 0x111111;
    public const int Muted = 0x555555;
    public const int Rule = 0x777777;
    public const int Hairline = 0xA6A6A6;
    public const int Band = 0xE9E9E9;
    public const int White = 0xFFFFFF;
}
