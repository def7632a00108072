using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Findings;

/// <summary>A finding that a waiver turned off: printed on the papers, counted nowhere.</summary>
public sealed record Waived(Finding Finding, Waiver Waiver);
