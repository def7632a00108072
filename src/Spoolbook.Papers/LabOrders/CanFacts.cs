using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.LabOrders;

/// <summary>One can in the box.</summary>
/// <param name="Code">The code on its label.</param>
/// <param name="TakenOut">The day it came out of the camera.</param>
/// <param name="Push">Empty where it is processed normally.</param>
/// <param name="DoNot">What the lab must not correct: effects made in the camera.</param>
/// <param name="Files">What its scan comes to; empty where none is ordered.</param>
/// <param name="Expect">What the lab will see and need not call about: fog, a short end cut off.</param>
public sealed record CanFacts(
    string Roll,
    string Code,
    string TakenOut,
    string Process,
    string Push,
    StockFacts Stock,
    string Rated,
    string Exposed,
    string Services,
    string Files,
    string Notes,
    ImmutableArray<string> DoNot,
    ImmutableArray<string> Expect,
    ImmutableArray<WaiverFacts> Waivers
)
{
    /// <summary>Whether there is something to do or to know that is not so of every can.</summary>
    public bool IsException => Push.Length > 0 || Notes.Length > 0 || !DoNot.IsEmpty || !Expect.IsEmpty || !Waivers.IsEmpty;
}
