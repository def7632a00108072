using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>How far something may be out before a check speaks. A production may set another figure under its name.</summary>
/// <param name="Name">What stands under <c>rules: tolerances:</c>; it lives for ever.</param>
/// <param name="Description">What is let pass, in a sentence.</param>
/// <param name="Source">Why this much, and who says so.</param>
public abstract record Tolerance(string Name, string Description, string Source)
{
    /// <summary>In what it is measured.</summary>
    public abstract ToleranceKind Kind { get; }

    /// <summary>The house's figure, as it is written in YAML.</summary>
    public abstract string UsualText { get; }

    /// <summary>What a text sets, as it would be written by the house; null where it sets nothing.</summary>
    public abstract string? Rewritten(string text, Gauge gauge);
}

/// <summary>A tolerance with its figure.</summary>
/// <param name="Usual">The house's figure.</param>
public sealed record Tolerance<T>(string Name, ToleranceKind<T> In, T Usual, string Description, string Source)
    : Tolerance(Name, Description, Source)
{
    public override ToleranceKind Kind => In;

    public override string UsualText => In.Write(Usual);

    public override string? Rewritten(string text, Gauge gauge) => In.Read(text, gauge, out var value) ? In.Write(value) : null;

    /// <summary>The figure that holds in a production; the house's where what is written cannot be read.</summary>
    public T For(Production production) =>
        production.Rules?.Tolerances.FirstOrDefault(t => t.Name.Value == Name) is { } set
        && In.Read(set.Value.Value, production.Gauge, out var value)
            ? value
            : Usual;
}
