namespace Spoolbook.Shoot.Records;

/// <summary>A value and where it was written. A null <c>Located</c> is a value that was not written.</summary>
public sealed record Located<T>(T Value, Place Place)
{
    /// <summary>The value alone.</summary>
    public override string ToString() => Value?.ToString() ?? "";
}
