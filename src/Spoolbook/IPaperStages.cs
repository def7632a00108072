using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>
/// The stages after the checks: printing and writing. They are passed to the pipeline, which stops before them without.
/// </summary>
internal interface IPaperStages
{
    /// <summary>Whether papers are printed in spite of errors; each page then says so.</summary>
    bool Draft { get; }

    /// <summary>Whether a warning keeps papers from being printed, as an error does.</summary>
    bool Strict => false;

    /// <summary>Where papers are written.</summary>
    WorkFolder Folder { get; }

    /// <summary>Prints every paper, in memory.</summary>
    PrintingStage Print(CheckedProduction found);
}
