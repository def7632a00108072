using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>The lab, and what was agreed with it.</summary>
public sealed record Lab(Place Place)
{
    /// <summary>Its name.</summary>
    public Located<string>? Name { get; init; }

    /// <summary>Its address, a line each.</summary>
    public ImmutableArray<Located<string>> Address { get; init; } = [];

    /// <summary>The contact, telephone, e-mail: free lines.</summary>
    public ImmutableArray<Located<string>> Contact { get; init; } = [];

    /// <summary>The processes that it runs, as it names them: <c>ecn-2</c>.</summary>
    public ImmutableArray<Located<string>> Processes { get; init; } = [];

    /// <summary>The most that it pushes or pulls, in stops.</summary>
    public Located<double>? PushMost { get; init; }

    /// <summary>Where the film goes back, a line each.</summary>
    public ImmutableArray<Located<string>> ReturnTo { get; init; } = [];

    /// <summary>Who pays, a line each.</summary>
    public ImmutableArray<Located<string>> BillTo { get; init; } = [];

    /// <summary>What was agreed on the telephone: free lines.</summary>
    public ImmutableArray<Located<string>> Agreed { get; init; } = [];

    /// <summary>Whom the lab calls before it does anything that is not written down, a line each.</summary>
    public ImmutableArray<Located<string>> InDoubt { get; init; } = [];

    /// <summary>The services for every roll, unless the roll has its own.</summary>
    public ImmutableArray<Located<string>> Services { get; init; } = [];

    /// <summary>When the result is needed.</summary>
    public Located<DateOnly>? NeededBy { get; init; }

    /// <summary>Days from sending until the film is back, as the lab says; from 1. Null where nobody wrote it.</summary>
    public Located<int>? Days { get; init; }

    /// <summary>The days of the week on which it takes film in; empty where nothing is written.</summary>
    public ImmutableArray<Located<DayOfWeek>> TakesInOn { get; init; } = [];

    /// <summary>The first day on which it takes in what comes on a day; that day itself where nothing is written.</summary>
    public DateOnly TakenInOn(DateOnly came)
    {
        var day = came;
        while (!TakesInOn.IsEmpty && TakesInOn.All(d => d.Value != day.DayOfWeek) && day < DateOnly.MaxValue)
        {
            day = day.AddDays(1);
        }

        return day;
    }

    /// <summary>What it is to deliver of the rolls that it scans; null where nothing is written.</summary>
    public Deliver? Deliver { get; init; }

    /// <summary>Its consignments, sent or planned, in the order of the list.</summary>
    public ImmutableArray<Consignment> Consignments { get; init; } = [];
}
