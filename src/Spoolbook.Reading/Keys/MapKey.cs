namespace Spoolbook.Reading.Keys;

sealed record MapKey(string Name, KeyTable Table, string Description) : Key(Name, Description);
