using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>The lab's work on one roll, with the lot's and the production's defaults for what the roll leaves out.</summary>
/// <param name="Process">The process: the roll's own, else its lot's; null where neither names one.</param>
/// <param name="Push">Stops to push (above zero) or pull (below).</param>
/// <param name="Services">Services beside the process: the roll's own list, else the lab's; each once, in the order written.</param>
public sealed record CostLabWork(string? Process, double Push, ImmutableArray<string> Services)
{
    /// <summary>The work on one roll.</summary>
    internal static CostLabWork Compute(Production production, Roll roll)
    {
        var services = roll.Lab is { Services.Length: > 0 } own ? own.Services : production.Lab?.Services ?? [];
        return new CostLabWork(
            roll.Lab?.Process?.Value ?? production.LotOf(roll)?.Process.Value,
            roll.Lab?.Push?.Value ?? 0,
            [.. services.Select(s => s.Value).Distinct(StringComparer.Ordinal)]
        );
    }

    /// <summary>Whole stops that the surcharge counts: half a stop costs a whole one.</summary>
    public Film.Ratio StopsCharged => new(new System.Numerics.BigInteger(Math.Ceiling(Math.Abs(Push))), 1);
}
