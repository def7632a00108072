using Spoolbook.Papers;

namespace Spoolbook.Writing;

/// <summary>
/// Keeps the first papers in memory and lays the others down in the folder they go to, hidden: of a shoot of thousands of takes they
/// are a hundred megabytes, and none may take its place before all are made.
/// </summary>
/// <param name="inMemory">How many bytes of papers stay in memory.</param>
internal sealed class PaperStaging(WorkFolder work, long inMemory = PaperStaging.Usual) : IPaperStaging
{
    const long Usual = 24 << 20;

    long _held;

    public PaperFile Stage(PaperFile paper)
    {
        lock (work)
        {
            if (_held + paper.Bytes.Length <= inMemory)
            {
                _held += paper.Bytes.Length;
                return paper;
            }

            try
            {
                return paper.At(work.Stage(paper.Name, paper.Bytes.AsSpan()));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // Whoever puts the papers in place says what is wrong with the disk.
                return paper;
            }
        }
    }
}
