namespace Spoolbook.Entry;

/// <summary>Something that keeps a table from being taken in, or that is worth saying about it.</summary>
/// <param name="Where">The cell's address, <c>Takes!F12 </c> or <c>takes.csv:12:F </c>; the row's or the file's where it is about no
/// cell.</param>
/// <param name="Message">What is wrong, in one sentence.</param>
/// <param name="Help">What to write instead.</param>
public sealed record Objection(string Where, string Message, string Help);
