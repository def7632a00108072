using Spoolbook.Papers.Typesetting.Drawing;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Something drawn behind a run of slices, anew on each page that they reach, given top and height.</summary>
sealed class Frame(Func<double, double, IEnumerable<PageMark>> marks)
{
    public MarkGroup Draw(double top, double height) => new(null, [.. marks(top, height)]);
}
