using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A take and its roll.</summary>
public sealed record CoveredTake(RollBook Roll, Layer Layer)
{
    /// <summary>Whether it is marked good.</summary>
    public bool IsGood => Layer.Take.Mark.Value == Mark.Good;
}
