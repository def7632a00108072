using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>How tightly a paper is set: the size of everything on it, and the space between its blocks, each usually 1.</summary>
/// <param name="Fitted">How large its fitted tables are, from compact, 0, to roomy, 1.</param>
sealed record Tightness(double Scale, double Spacing, double Fitted = 0)
{
    // A last page that is fuller than this is worth its sheet.
    const double ShortPage = 0.4;

    // In a longer paper, saving the last page would make all the others smaller.
    const int MostPages = 8;

    static readonly double[] _larger = [1, 0.7, 0.4];
    static readonly double[] _smaller = [0.99, 0.97, 0.94, 0.91];

    /// <summary>As the sheet sets it.</summary>
    public static Tightness Usual(PageSetup setup) => new(setup.Scale, setup.Scale);

    // A table in smaller type than this is read with a finger on the line: a second sheet is better.
    const double LeastTable = 7.3;

    /// <summary>
    /// The steps to save a short last page: first less space between blocks and rows, then slightly smaller type, as far as
    /// its tables stay legible. A pocket card's type is already as small as it can be read.
    /// </summary>
    /// <param name="table">The smallest type of its tables.</param>
    public static IEnumerable<Tightness> Tighter(PageSetup setup, double table) =>
        [
            new(setup.Scale, setup.Scale * 0.7),
            new(setup.Scale, setup.Scale * 0.5),
            .. _smaller.Where(scale => setup.Scale >= 1 && scale * table >= LeastTable).Select(scale => new Tightness(scale, 0.5)),
        ];

    /// <summary>The steps by which fitted tables fill what white is left on the last page, the largest first.</summary>
    /// <param name="rows">The rows of these tables.</param>
    public static IEnumerable<Tightness> Larger(PageSetup setup, IReadOnlyList<LaidPage> pages, double capacity, int rows) =>
        rows == 0
            ? []
            : from fitted in _larger
              where rows * TableLook.Growth(fitted) <= capacity - pages[^1].Filled
              select Usual(setup) with
              {
                  Fitted = fitted,
              };

    /// <summary>Whether the last of these pages has so little on it that it is worth saving.</summary>
    public static bool IsWorthwhile(IReadOnlyList<LaidPage> pages, double capacity) =>
        pages.Count is > 1 and <= MostPages && !pages[^1].WholePage && !pages[^1].Asked && pages[^1].Filled < ShortPage * capacity;
}
