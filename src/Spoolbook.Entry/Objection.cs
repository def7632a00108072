namespace Spoolbook.Entry;

/// <summary>Something that stops an import, or that is worth knowing.</summary>
/// <param name="Where">
/// The cell's address, <c>Takes!F12</c> or <c>takes.csv:12:F</c>; the row or the file where it is not about one cell.
/// </param>
/// <param name="Message">What is wrong, in one sentence.</param>
/// <param name="Help">What to write instead.</param>
public sealed record Objection(string Where, string Message, string Help);
