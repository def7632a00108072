using System.Globalization;

namespace Spoolbook.Shoots;

/// <summary>Which take is next on a production's slate: a shot until it is got, then the next on the list.</summary>
sealed class Slate
{
    int _shot;

    public int Take { get; private set; } = 1;

    public string Scene => ((_shot / 6) + 1).ToString(CultureInfo.InvariantCulture);

    public string Letter => ((char)('A' + (_shot % 6))).ToString();

    /// <summary>After a take: the next of the same shot, or the first of the next.</summary>
    public void Next(int number, bool isGood, int shots)
    {
        _shot = isGood ? (_shot + 1) % shots : _shot;
        Take = isGood ? 1 : number + 1;
    }
}
