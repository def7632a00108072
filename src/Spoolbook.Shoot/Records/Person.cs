namespace Spoolbook.Shoot.Records;

/// <summary>A member of the crew.</summary>
public sealed record Person(Place Place, Located<string> Id, Located<string> FullName, Located<string>? Role);
