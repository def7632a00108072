namespace Spoolbook.Reading.Keys;

/// <summary>A key with a map.</summary>
sealed record MapKey(string Name, KeyTable Table, string Description) : Key(Name, Description);
