using System.Collections.Immutable;

namespace Spoolbook;

/// <summary>One production of several, after the command was through with it. Small: it outlives the production's own records.</summary>
/// <param name="Name">The production's folder, as a path from the folder that the command runs in.</param>
/// <param name="Status">What the command would have returned for it alone, an <see cref="ExitStatus"/>.</param>
/// <param name="Printed">Its part of what is printed, in the form that was asked for.</param>
/// <param name="Said">What it said on the error output, a line each.</param>
internal sealed record ProductionDone(string Name, int Status, string Printed, string Said)
{
    /// <summary>Whether it is the school over the productions, by the name of its file.</summary>
    public bool IsSchool { get; init; }

    /// <summary>Its findings that are errors.</summary>
    public int Errors { get; init; }

    /// <summary>Its findings that are warnings.</summary>
    public int Warnings { get; init; }

    /// <summary>Its findings that are notes.</summary>
    public int Notes { get; init; }

    /// <summary>Its papers; null where none were written.</summary>
    public int? Papers { get; init; }

    /// <summary>How many of the papers are new or other than before.</summary>
    public int ChangedPapers { get; init; }

    /// <summary>The questions that no check could judge, by name.</summary>
    public ImmutableArray<string> NotLookedAt { get; init; } = [];

    /// <summary>Whether something other than its own errors stopped it.</summary>
    public bool IsFaulty => Status is not (ExitStatus.Well or ExitStatus.ErrorsFound);
}
