namespace Spoolbook.Entry.Lines;

/// <summary>A token that is known by its form, and the key that it is.</summary>
/// <param name="Looks">How it looks, for the reference: a few examples.</param>
sealed record FormRule(string Key, LineForm Form, string Looks);
