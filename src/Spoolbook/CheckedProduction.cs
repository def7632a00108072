using System.Collections.Immutable;
using Spoolbook.Checks.Unjudged;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook;

/// <summary>A production with all its findings.</summary>
/// <param name="Books">The books; null where nothing could be read.</param>
/// <param name="Findings">The findings left, in order of place.</param>
/// <param name="Waived">What a waiver turned off.</param>
internal sealed record CheckedProduction(SourceTexts Sources, Books? Books, ImmutableArray<Finding> Findings, ImmutableArray<Waived> Waived)
{
    /// <summary>One of which nothing was read yet.</summary>
    public static CheckedProduction Nothing { get; } = new(SourceTexts.Nothing, null, [], []);

    /// <summary>What no check could judge; empty where nothing could be read.</summary>
    public ImmutableArray<NotLookedAt> NotLookedAt => Books is null ? [] : Questions.Of(Books.Production, Findings);

    /// <summary>Whether it was not checked to the end, because something broke.</summary>
    public bool IsUnfinished { get; init; }

    /// <summary>The rolls; null where nothing could be read.</summary>
    public ShootBook? Book => Books?.Shoot;

    /// <summary>How many of the findings are errors.</summary>
    public int Errors => Findings.Count(f => f.Level == Level.Error);

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Errors > 0;

    /// <summary>Whether a command fails by them.</summary>
    /// <param name="isStrict">Whether a warning is enough.</param>
    public bool Fails(bool isStrict) => HasErrors || (isStrict && Findings.Any(f => f.Level == Level.Warning));
}
