using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

/// <summary>What a roll is sent to the lab for.</summary>
static class Orders
{
    /// <summary>Whether the roll is meant to go to the lab, now or once it is out of the camera.</summary>
    public static bool GoesToLab(Roll roll) => !roll.IsPractice && (roll.Lab?.Send?.Value ?? true);

    /// <summary>The process it goes through: as ordered, else what the stock is made for; null where the lot is unknown.</summary>
    public static Located<string>? ProcessOf(Context context, Roll roll) => roll.Lab?.Process ?? context.Production.LotOf(roll)?.Process;

    /// <summary>Stops that it is pushed (above zero) or pulled.</summary>
    public static double PushOf(Roll roll) => roll.Lab?.Push?.Value ?? 0;
}
