namespace Spoolbook.Reading.Keys;

/// <summary>A key with a list of maps of one kind.</summary>
sealed record MapsKey(string Name, KeyTable Table, string Description) : Key(Name, Description);
