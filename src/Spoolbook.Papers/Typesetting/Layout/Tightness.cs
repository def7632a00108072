using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>How tightly a paper is set: the size of everything on it, and the space between its blocks, each 1 as a rule.</summary>
sealed record Tightness(double Scale, double Spacing)
{
    // A last page that is fuller than this is worth its sheet.
    const double ShortPage = 0.4;

    // To save the last of many pages, all of them would be set smaller.
    const int MostPages = 8;

    /// <summary>As the sheet asks for it.</summary>
    public static Tightness Usual(PageSetup setup) => new(setup.Scale, setup.Scale);

    /// <summary>
    /// What a typesetter tries to bring a short last page home: first the white, then a little of the size too. A pocket card
    /// is as small as stays readable already.
    /// </summary>
    public static IEnumerable<Tightness> Tighter(PageSetup setup) =>
        setup.Scale < 1 ? [] : [new(1, 0.7), new(0.97, 0.7), new(0.94, 0.65), new(0.91, 0.6)];

    /// <summary>Whether the last of these pages holds so little that it is worth bringing home.</summary>
    public static bool IsWorthwhile(IReadOnlyList<LaidPage> pages, double capacity) =>
        pages.Count is > 1 and <= MostPages && !pages[^1].WholePage && !pages[^1].Asked && pages[^1].Filled < ShortPage * capacity;
}
