using System.Collections.Immutable;

namespace Spoolbook.Reading.Editing;

/// <summary>Takes items out of brackets, each with one of the commas beside it.</summary>
static class BracketItems
{
    /// <param name="items">Where each begins and ends, in order.</param>
    public static void TakeOut(Pen pen, ImmutableArray<(int Start, int End)> items, Func<int, bool> isGone)
    {
        var kept = Enumerable.Range(0, items.Length).FirstOrDefault(i => !isGone(i), -1);
        if (kept < 0)
        {
            pen.Put(items[0].Start, items[^1].End, "");
            return;
        }

        if (kept > 0)
        {
            pen.Put(items[0].Start, items[kept].Start, "");
        }

        for (var i = kept + 1; i < items.Length; i++)
        {
            if (isGone(i))
            {
                pen.Put(items[i - 1].End, items[i].End, "");
            }
        }
    }
}
