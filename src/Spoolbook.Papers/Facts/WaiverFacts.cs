using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Facts;

/// <summary>A rule broken intentionally.</summary>
public sealed record WaiverFacts(string Check, string What, string Reason, string By)
{
    internal static WaiverFacts Of(Waived waived, PaperFormat format) =>
        new(
            waived.Finding.Check,
            waived.Finding.Description.In(format.Sentences),
            waived.Waiver.Reason?.Value ?? "",
            format.Person(waived.Waiver.By?.Value)
        );
}
