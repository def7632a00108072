namespace Spoolbook.Reading.Readers;

/// <summary>The kinds of file, in the order they are read in.</summary>
enum FileKind
{
    /// <summary>production.yaml, or the one file that holds everything.</summary>
    Production,
    Stock,
    Kit,
    Roll,
}
