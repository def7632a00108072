using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook;

/// <summary>A production with everything that was found in it.</summary>
/// <param name="Books">The books; null where nothing could be read.</param>
/// <param name="Findings">What stands, in order of place.</param>
/// <param name="Waived">What a waiver turned off.</param>
internal sealed record Judged(SourceTexts Sources, Books? Books, ImmutableArray<Finding> Findings, ImmutableArray<Waived> Waived)
{
    /// <summary>The rolls; null where nothing could be read.</summary>
    public ShootBook? Book => Books?.Shoot;

    public bool HasErrors => Findings.Any(f => f.Level == Level.Error);

    /// <summary>With what printing found besides.</summary>
    public Judged With(ImmutableArray<Finding> more) => this with { Findings = [.. Findings, .. more] };
}
