namespace Spoolbook.Reading.Files;

/// <summary>Part of a line, and where in it the place is: column from 1, column and length in UTF-16 characters.</summary>
public sealed record Excerpt(string Text, int Column, int Length);
