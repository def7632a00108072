namespace Spoolbook.Shoot.Records;

/// <summary>A shooting day.</summary>
public sealed record ShootingDay(Place Place, Located<int> Number, Located<DateOnly> On, Located<string>? Where, Located<string>? Note);
