namespace Spoolbook.Papers.Workbook;

/// <summary>The rows above the data of a table: its heading, a sentence, the sums, the heads.</summary>
static class TableRows
{
    public const int Sentence = 1;
    public const int Sums = 2;
    public const int Heads = 3;

    /// <summary>How many there are.</summary>
    public const int Before = 4;
}
