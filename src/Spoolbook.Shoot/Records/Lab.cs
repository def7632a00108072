using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>The lab, and what was agreed with it.</summary>
public sealed record Lab(Place Place)
{
    /// <summary>Its name.</summary>
    public Located<string>? Name { get; init; }

    /// <summary>Its address, a line each.</summary>
    public ImmutableArray<Located<string>> Address { get; init; } = [];

    /// <summary>Whom to ask for, telephone, e-mail: free lines.</summary>
    public ImmutableArray<Located<string>> Contact { get; init; } = [];

    /// <summary>The processes that it runs, as it names them: <c>ecn-2</c>.</summary>
    public ImmutableArray<Located<string>> Processes { get; init; } = [];

    /// <summary>The farthest that it pushes or pulls, in stops.</summary>
    public Located<double>? PushMost { get; init; }

    /// <summary>Where the film goes back, a line each.</summary>
    public ImmutableArray<Located<string>> ReturnTo { get; init; } = [];

    /// <summary>Who pays, a line each.</summary>
    public ImmutableArray<Located<string>> BillTo { get; init; } = [];

    /// <summary>What was promised on the telephone: free lines.</summary>
    public ImmutableArray<Located<string>> Agreed { get; init; } = [];

    /// <summary>Whom it asks before it does anything that was not written down, a line each.</summary>
    public ImmutableArray<Located<string>> InDoubt { get; init; } = [];

    /// <summary>What is wanted for every roll unless it says otherwise.</summary>
    public ImmutableArray<Located<string>> Services { get; init; } = [];

    /// <summary>When the result is needed.</summary>
    public Located<DateOnly>? NeededBy { get; init; }

    /// <summary>What went to it together, or is to go, in the order of the list.</summary>
    public ImmutableArray<Consignment> Consignments { get; init; } = [];
}
