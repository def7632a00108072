using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

/// <summary>A roll's order to the lab.</summary>
static class Orders
{
    /// <summary>The process that it goes through: as ordered, else the stock's own; null where the lot is unknown.</summary>
    public static Located<string>? ProcessOf(Context context, Roll roll) => roll.Lab?.Process ?? context.Production.LotOf(roll)?.Process;

    /// <summary>A process without what people write in between: <c>ECN 2</c> and <c>ecn-2</c> are one.</summary>
    public static string Plain(string process) => string.Concat(process.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    /// <summary>Stops of push (above zero) or pull.</summary>
    public static double PushOf(Roll roll) => roll.Lab?.Push?.Value ?? 0;
}
