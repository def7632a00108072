using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>Successive takes on a roll with the same mistake: made once, flagged once.</summary>
/// <param name="Takes">The takes, in order; at least one.</param>
/// <param name="Fault">What is wrong with all of them.</param>
sealed record Run<T>(ImmutableArray<Take> Takes, T Fault)
{
    /// <summary>The first take, where the finding is.</summary>
    public Take First => Takes[0];

    /// <summary>Whether it is a single take.</summary>
    public bool IsOne => Takes.Length == 1;

    /// <summary>The slates, for a sentence: <c>1A/2</c>, <c>1A/2 to 1B/1</c>.</summary>
    public Sentence Slates =>
        Takes.Length switch
        {
            1 => Sentence.Plain(First.Slate),
            2 => Context.And(Takes.Select(t => t.Slate)),
            _ => Context.FromTo(First.Slate, Takes[^1].Slate),
        };
}
