using System.Collections.Immutable;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.LabOrders;

/// <summary>Cans of an order that are exceptions for one reason.</summary>
/// <param name="What">The reason: a process, a push, fog.</param>
/// <param name="Rolls">Their rolls, in few words.</param>
/// <param name="IsWork">Whether the machine or its time is another, so that it stands out.</param>
public sealed record ExceptionKind(string What, string Rolls, bool IsWork)
{
    /// <summary>The reasons that there are, what costs most to miss first.</summary>
    /// <param name="cans">The exceptions, in the order of the box.</param>
    internal static ImmutableArray<ExceptionKind> Of(IReadOnlyCollection<CanFacts> cans, Translations words) =>
        [
            .. cans.Where(c => c.ProcessStandsOut).GroupBy(c => c.ShortProcess).Select(same => Named(same.Key, same, true)),
            .. cans.Where(c => c.Push.Length > 0).GroupBy(c => $"{words["push"]} {c.Push}").Select(same => Named(same.Key, same, true)),
            .. Said("exceptions-effects", cans.Where(c => !c.DoNot.IsEmpty), words),
            .. Said("exceptions-fog", cans.Where(c => c.IsFogged), words),
            .. Said("exceptions-x-rayed", cans.Where(c => c.IsXRayed), words),
            .. Said("exceptions-head-out", cans.Where(c => c.IsHeadOut), words),
            .. Said("exceptions-notes", cans.Where(c => c.Notes.Length > 0 || c.IsAgreedApart || !c.Waivers.IsEmpty), words),
        ];

    static IEnumerable<ExceptionKind> Said(string word, IEnumerable<CanFacts> cans, Translations words) =>
        cans.Any() ? [Named(words[word], cans, false)] : [];

    static ExceptionKind Named(string what, IEnumerable<CanFacts> cans, bool isWork) =>
        new(what, RollRuns.Of(cans.Select(c => c.Roll)), isWork);
}
