namespace Spoolbook.Papers;

/// <summary>Takes finished papers out of memory until all of them are made: they are put in place together.</summary>
public interface IPaperStaging
{
    /// <summary>The paper, in memory still or laid down as a file. Called by several papers at a time.</summary>
    PaperFile Stage(PaperFile paper);
}
