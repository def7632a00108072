namespace Spoolbook.Entry.Lines;

/// <summary>A token known by its form, and the key it is for.</summary>
/// <param name="Looks">A few examples, for the reference.</param>
sealed record FormRule(string Key, LineForm Form, string Looks);
