namespace Spoolbook.Shoot.Records;

/// <summary>A light meter.</summary>
public sealed record LightMeter(Place Place, Located<string> Name, Located<string>? What, Located<string>? Serial, Returned Returned);
