using System.Globalization;

namespace Spoolbook.Shoots;

/// <summary>Which take is next on a production's slate: a shot until it is got, then the next on the list.</summary>
sealed class Slate
{
    /// <summary>Which shot of the list is next, from 0.</summary>
    public int Shot { get; private set; }

    public int Take { get; private set; } = 1;

    public string Scene => ((Shot / 6) + 1).ToString(CultureInfo.InvariantCulture);

    public string Letter => ((char)('A' + (Shot % 6))).ToString();

    /// <summary>After a take: the next of the same shot, or the first of the next.</summary>
    public void Next(int number, bool isGood, int shots)
    {
        Shot = isGood ? (Shot + 1) % shots : Shot;
        Take = isGood ? 1 : number + 1;
    }
}
