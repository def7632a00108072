using System.Globalization;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Shoot.Records;

/// <summary>Where something is in the production folder. Lines and columns count from 1, columns and length in characters.</summary>
/// <param name="File">Path from the production folder, with forward slashes.</param>
public readonly record struct Place(string File, int Line, int Column, int Length)
{
    /// <summary>Whether it is in a file above the production's folder: the school's.</summary>
    public bool IsAbove => File?.StartsWith("../", StringComparison.Ordinal) == true;

    /// <summary><c>rolls/r03.yaml:7:12</c></summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{TextCharacters.Escaped(File)}:{Line}:{Column}");
}
