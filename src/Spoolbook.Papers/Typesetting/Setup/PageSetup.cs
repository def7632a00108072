namespace Spoolbook.Papers.Typesetting.Setup;

/// <summary>The sheet that a paper is printed on, and the head and foot of each page.</summary>
public sealed record PageSetup(Paper Paper)
{
    public bool Landscape { get; init; }

    public string HeadLeft { get; init; } = "";

    public string HeadRight { get; init; } = "";

    public string FootLeft { get; init; } = "";

    /// <summary>A word in white on black at the head and foot of each page: "DRAFT"; empty for none.</summary>
    public string Stamp { get; init; } = "";

    public PageLabels Words { get; init; } = PageLabels.English;

    /// <summary>Where a colour is printed instead of black.</summary>
    public PageInks Inks { get; init; } = PageInks.Black;

    /// <summary>Width and height in points.</summary>
    public (double Width, double Height) Size
    {
        get
        {
            const double Millimetre = 72 / 25.4;
            var (width, height) = Paper switch
            {
                Paper.A4 => (210 * Millimetre, 297 * Millimetre),
                Paper.A6 => (105 * Millimetre, 148 * Millimetre),
                _ => (612.0, 792.0),
            };
            return Landscape ? (height, width) : (width, height);
        }
    }

    /// <summary>The margin left and right, in points: room for punched holes.</summary>
    public double Margin => Paper == Paper.A6 ? 15 : 40;

    /// <summary>The margin above the running head and below the foot, in points: any printer can reach it.</summary>
    public double EndMargin => Paper == Paper.A6 ? 13 : 30;

    /// <summary>The scale of everything: 1 on a sheet; on a pocket card, which is held close, as small as it can be read.</summary>
    public double Scale => Paper == Paper.A6 ? 0.84 : 1;
}
