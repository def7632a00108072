using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Departments;

/// <summary>A roll of a production in a body of the school's.</summary>
/// <param name="Body">The body, by name.</param>
/// <param name="Roll">The roll, by name.</param>
/// <param name="From">The first day.</param>
/// <param name="To">The last known day.</param>
/// <param name="Place">Where the first day is written, from the school's folder.</param>
public sealed record BodyUse(string Body, string Roll, DateOnly From, DateOnly To, Place Place);
