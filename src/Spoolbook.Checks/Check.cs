using Spoolbook.Checks.Accepting;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot;

namespace Spoolbook.Checks;

/// <summary>When something is found. What an earlier round found wrong in a roll keeps the later rounds away from it.</summary>
public enum Round
{
    /// <summary>While the files are read.</summary>
    Reading,

    /// <summary>On what was written down.</summary>
    Records,

    /// <summary>On where the film stood: whether the log and the film can both be right.</summary>
    Positions,

    /// <summary>On what lies on the film, and on its account.</summary>
    Strips,

    /// <summary>On the waivers, when it is known what they turned off.</summary>
    Waivers,

    /// <summary>While the papers are printed.</summary>
    Printing,

    /// <summary>In no round of its own: when a check of any round breaks.</summary>
    Breaking,
}

/// <summary>One thing that can be wrong. Its page of the same name says what, why, and what to do.</summary>
/// <param name="Name"><c>group/what</c>, after the mistake and not after the rule. It lives for ever.</param>
/// <param name="Level">How grave, unless the finding says otherwise.</param>
public abstract record Check(string Name, Level Level, Round Round)
{
    /// <summary>The first half of the name.</summary>
    public string Group => Name[..Name.IndexOf('/', StringComparison.Ordinal)];

    internal Finding At(Place place, Sentence message) => new(Name, Level, message, place);

    internal Finding At(Roll roll, Place place, Sentence message) => At(place, message) with { Roll = roll.Name.Value };

    internal Finding At(Roll roll, Take take, Place place, Sentence message) => At(roll, place, message) with { Take = take.Slate };
}

/// <summary>A check on the records.</summary>
/// <param name="NeedsAll">Whether it compares all the rolls, so that a roll that could not be read would mislead it.</param>
public sealed record RecordCheck(string Name, Level Level, Func<Context, IEnumerable<Finding>> Look, bool NeedsAll = false)
    : Check(Name, Level, Round.Records);

/// <summary>A check on one roll's strip or account.</summary>
public sealed record RollCheck(string Name, Level Level, Round Round, Func<Context, RollBook, IEnumerable<Finding>> Look)
    : Check(Name, Level, Round);

/// <summary>A check on the books of the whole shoot. It reads them and keeps none of its own.</summary>
public sealed record BookCheck(string Name, Level Level, Func<Context, Books, IEnumerable<Finding>> Look)
    : Check(Name, Level, Round.Strips);

/// <summary>A check on a waiver.</summary>
public sealed record WaiverCheck(string Name, Level Level)
    : Check(Name, Level, Round.Waivers);

/// <summary>Something that another room says. It is listed here so that it is explained, set and accepted as a check's findings are.</summary>
public sealed record StageCheck(string Name, Level Level, Round Round)
    : Check(Name, Level, Round);
