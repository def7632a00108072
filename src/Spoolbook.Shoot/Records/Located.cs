namespace Spoolbook.Shoot.Records;

/// <summary>A value and the place where it was written. A value that was not written is a null <c>Located</c>.</summary>
public sealed record Located<T>(T Value, Place Place)
{
    /// <summary>The value alone.</summary>
    public override string ToString() => Value?.ToString() ?? "";
}
