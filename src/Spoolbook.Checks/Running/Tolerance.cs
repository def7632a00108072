using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>How far something may be out before a check flags it. A production may set another figure.</summary>
/// <param name="Name">Its key under <c>rules: tolerances:</c>. Never changes.</param>
/// <param name="Description">What passes, in a sentence.</param>
/// <param name="Source">Why this figure, and whose it is.</param>
public abstract record Tolerance(string Name, string Description, string Source)
{
    /// <summary>The kind of figure.</summary>
    public abstract ToleranceKind Kind { get; }

    /// <summary>The house's figure, as written in YAML.</summary>
    public abstract string UsualText { get; }

    /// <summary>A text in the house's own writing; null where the text is no figure.</summary>
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

    /// <summary>The figure in a production; the house's where the written one cannot be read.</summary>
    public T For(Production production) =>
        production.Rules?.Tolerances.FirstOrDefault(t => t.Name.Value == Name) is { } set
        && In.Read(set.Value.Value, production.Gauge, out var value)
            ? value
            : Usual;
}
