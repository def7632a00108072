using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>One thing that can be wrong. Its page of the same name says what, why, and what to do.</summary>
/// <param name="Name"><c>group/what</c>, named after the mistake, not the rule. Never changes.</param>
/// <param name="Level">The usual level; a finding may have another.</param>
public abstract record Check(string Name, Level Level, Round Round)
{
    /// <summary>The first half of the name.</summary>
    public string Group => Name[..Name.IndexOf('/', StringComparison.Ordinal)];

    internal Finding At(Place place, Sentence message) => new(Name, Level, message, place);

    internal Finding At(Roll roll, Place place, Sentence message) => At(place, message) with { Roll = roll.Name.Value };

    internal Finding At(Roll roll, Take take, Place place, Sentence message) => At(roll, place, message) with { Take = take.Slate };
}
