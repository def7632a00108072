namespace Spoolbook.Reading.Readers;

/// <summary>The kinds of file, in the order in which they are read.</summary>
enum FileKind
{
    /// <summary>production.yaml, or the one file that holds everything.</summary>
    Production,
    Stock,
    Kit,
    Roll,
}
