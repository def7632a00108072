using Spoolbook.Intake;
using Spoolbook.Papers.Workbook;

namespace Spoolbook.Importing;

/// <summary>The heads of the workbook's sheet of takes as the intake knows its columns.</summary>
internal static class TakesTable
{
    public static TakeHeads Heads { get; } = new(
        [TakesVocabulary.Sheet],
        TakesVocabulary.Heads.Zip(Enum.GetValues<TakeColumn>()).Select(h => (h.Second, h.First)),
        TakesVocabulary.Marks);
}
