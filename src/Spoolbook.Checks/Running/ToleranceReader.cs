using Spoolbook.Film;

namespace Spoolbook.Checks.Running;

/// <summary>Text to a value; false where the text is no such value.</summary>
public delegate bool ToleranceReader<T>(string text, Gauge gauge, out T value);
