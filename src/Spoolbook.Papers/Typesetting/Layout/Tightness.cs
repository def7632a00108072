using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>How tightly a paper is set: the size of everything on it, and the space between its blocks, each usually 1.</summary>
sealed record Tightness(double Scale, double Spacing)
{
    // A last page that is fuller than this is worth its sheet.
    const double ShortPage = 0.4;

    // In a longer paper, saving the last page would make all the others smaller.
    const int MostPages = 8;

    /// <summary>As the sheet sets it.</summary>
    public static Tightness Usual(PageSetup setup) => new(setup.Scale, setup.Scale);

    /// <summary>
    /// The steps to save a short last page: first less space between blocks and rows, then slightly smaller type. A pocket
    /// card is already as small as it can be read.
    /// </summary>
    public static IEnumerable<Tightness> Tighter(PageSetup setup) =>
        setup.Scale < 1 ? [] : [new(1, 0.7), new(1, 0.5), new(0.99, 0.5), new(0.97, 0.5), new(0.94, 0.5), new(0.91, 0.5)];

    /// <summary>Whether the last of these pages has so little on it that it is worth saving.</summary>
    public static bool IsWorthwhile(IReadOnlyList<LaidPage> pages, double capacity) =>
        pages.Count is > 1 and <= MostPages && !pages[^1].WholePage && !pages[^1].Asked && pages[^1].Filled < ShortPage * capacity;
}
