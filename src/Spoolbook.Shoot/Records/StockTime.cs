namespace Spoolbook.Shoot.Records;

/// <summary>A day, and the time of day where it is written.</summary>
/// <param name="Day">The day.</param>
/// <param name="Time">The time; null where only the day is known.</param>
public readonly record struct StockTime(DateOnly Day, TimeOnly? Time)
{
    /// <summary>The first moment that it can mean.</summary>
    public DateTime Earliest => Day.ToDateTime(Time ?? TimeOnly.MinValue);

    /// <summary>The last moment that it can mean.</summary>
    public DateTime Latest => Day.ToDateTime(Time ?? TimeOnly.MaxValue);
}
