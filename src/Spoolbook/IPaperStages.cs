namespace Spoolbook;

/// <summary>The stages after the checks, which need the press: this room has no press, so they are handed to the pipeline.</summary>
internal interface IPaperStages
{
    /// <summary>Whether papers are printed although there are errors; each page then says so.</summary>
    bool Draft { get; }

    /// <summary>Prints every paper, in memory.</summary>
    PrintingStage Print(CheckedProduction found);
}
