using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>How many went out with the kit, and how many came back; whose they are, and what became of them.</summary>
/// <param name="Out">Pieces lent; 1 unless written.</param>
/// <param name="Back">Pieces returned; null while the kit is out.</param>
public sealed record Returned(int Out, Located<int>? Back, Located<string>? Note)
{
    /// <summary>Whose it is, where it is not the owner's of the loan.</summary>
    public Located<string>? Owner { get; init; }

    /// <summary>Who borrowed it, by id, where it is not the borrower of the loan.</summary>
    public Located<string>? BorrowedBy { get; init; }

    /// <summary>The day that it must be back, where it is not the loan's.</summary>
    public Located<DateOnly>? Due { get; init; }

    /// <summary>What one of them is worth, in the currency of the rates; null where nobody said.</summary>
    public Located<decimal>? Value { get; init; }

    /// <summary>Where it is kept: its case, and its slot there.</summary>
    public Located<string>? Kept { get; init; }

    /// <summary>What state it went out in, in words.</summary>
    public Located<string>? ConditionOut { get; init; }

    /// <summary>What state it came back in, in words.</summary>
    public Located<string>? ConditionBack { get; init; }

    /// <summary>Pieces that did not come back; null while the kit is out.</summary>
    public int? Missing => Back is null ? null : Out - Back.Value;
}

/// <summary>What holds for the whole kit: who lent it, to whom, and for how long.</summary>
public sealed record Loan(Place Place)
{
    /// <summary>Whose the kit is.</summary>
    public Located<string>? Owner { get; init; }

    /// <summary>Who borrowed it, by id.</summary>
    public Located<string>? BorrowedBy { get; init; }

    /// <summary>The day that it went out.</summary>
    public Located<DateOnly>? On { get; init; }

    /// <summary>The day that it must be back.</summary>
    public Located<DateOnly>? Due { get; init; }

    /// <summary>The day that it came back; null while it is out.</summary>
    public Located<DateOnly>? BackOn { get; init; }

    /// <summary>What the owner wants done before it goes back: free lines.</summary>
    public ImmutableArray<Located<string>> Care { get; init; } = [];
}

/// <summary>A camera body.</summary>
public sealed record Body(Place Place)
{
    /// <summary>Its name in the log: <c>B1</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>What it is, in words.</summary>
    public Located<string>? What { get; init; }

    /// <summary>Its number.</summary>
    public Located<string>? Serial { get; init; }

    /// <summary>The speeds engraved on its dial.</summary>
    public ImmutableArray<Located<Speed>> Speeds { get; init; } = [];

    /// <summary>The slowest speed that it can be set to; the lowest engraved unless written.</summary>
    public Located<Speed>? Slowest { get; init; }

    /// <summary>The fastest speed that it can be set to; the highest engraved unless written.</summary>
    public Located<Speed>? Fastest { get; init; }

    /// <summary>Shutter angle fully open, in degrees.</summary>
    public Located<Ratio>? ShutterAngle { get; init; }

    /// <summary>The variable shutter's marks, from open to closed.</summary>
    public ImmutableArray<ShutterMark> ShutterMarks { get; init; } = [];

    /// <summary>Part of the light that the finder takes: 0.2 for 20 %.</summary>
    public Located<Ratio>? FinderLoss { get; init; }

    /// <summary>Film that a full wind of the spring drives, the same at any speed; null for a body without a spring.</summary>
    public Located<Footage>? FullWind { get; init; }

    /// <summary>How its spring was left when it was put away; null where nobody said.</summary>
    public Located<SpringLeft>? Spring { get; init; }

    /// <summary>The speed that loading is done at.</summary>
    public Located<Speed>? LoadingSpeed { get; init; }

    /// <summary>Frames after which its frame counter stands at zero again; null for a counter that never comes round, or if nobody said.</summary>
    public Located<long>? CounterWraps { get; init; }

    /// <summary>The most film that it takes.</summary>
    public Located<Footage>? Takes { get; init; }

    /// <summary>Whether it came back.</summary>
    public Returned Returned { get; init; } = new(1, null, null);

    /// <summary>The shutter mark of that name, or null.</summary>
    public ShutterMark? MarkNamed(string name) => ShutterMarks.FirstOrDefault(m => m.Name.Value == name);
}

/// <summary>A mark of a variable shutter.</summary>
/// <param name="Open">The part of the full opening that is left: 1 open, 0 closed.</param>
/// <param name="Stops">The stops that the trade counts for it; null for closed.</param>
public sealed record ShutterMark(Place Place, Located<string> Name, Located<Ratio> Open, Located<double>? Stops);

/// <summary>A lens.</summary>
public sealed record Lens(Place Place)
{
    /// <summary>Its name in the log: <c>25mm</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>What it is, in words.</summary>
    public Located<string>? What { get; init; }

    /// <summary>Its number.</summary>
    public Located<string>? Serial { get; init; }

    /// <summary>Focal length in millimetres.</summary>
    public Located<Ratio>? Focal { get; init; }

    /// <summary>The widest stop on its ring.</summary>
    public Located<Stop>? Widest { get; init; }

    /// <summary>The smallest stop on its ring.</summary>
    public Located<Stop>? Smallest { get; init; }

    /// <summary>The nearest distance that it focuses at, from the film plane.</summary>
    public Located<Distance>? Nearest { get; init; }

    /// <summary>Whether it came back.</summary>
    public Returned Returned { get; init; } = new(1, null, null);
}

/// <summary>A filter.</summary>
/// <param name="Stops">What it costs, in stops.</param>
/// <param name="Mireds">What it adds to the mireds of the light; null where its name tells.</param>
public sealed record Filter(Place Place, Located<string> Name, Located<string>? What, Located<double>? Stops, Located<int>? Mireds, Returned Returned)
{
    /// <summary>Its number, or a mark to know it by.</summary>
    public Located<string>? Serial { get; init; }
}

/// <summary>A light meter.</summary>
public sealed record LightMeter(Place Place, Located<string> Name, Located<string>? What, Located<string>? Serial, Returned Returned);

/// <summary>A motor.</summary>
/// <param name="Sync">Whether it holds speed well enough for sound.</param>
public sealed record Motor(Place Place, Located<string> Name, Located<string>? What, ImmutableArray<Located<Speed>> Speeds, Located<bool>? Sync, Returned Returned)
{
    /// <summary>Its number, or a mark to know it by.</summary>
    public Located<string>? Serial { get; init; }
}

/// <summary>Anything else that must go back.</summary>
/// <param name="TakeUp">Whether these are the empty take-up spools that rolls are wound on to.</param>
public sealed record KitItem(Place Place, Located<string> Name, Located<bool>? TakeUp, Returned Returned)
{
    /// <summary>Its number, or a mark to know it by.</summary>
    public Located<string>? Serial { get; init; }
}
