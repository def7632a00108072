using Spoolbook.Film;

namespace Spoolbook.Checks.Running;

/// <summary>Text to a value; false where the text does not write one.</summary>
public delegate bool ToleranceReader<T>(string text, Gauge gauge, out T value);
