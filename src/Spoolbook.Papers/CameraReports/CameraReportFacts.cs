using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Logs;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.CameraReports;

/// <summary>The facts of one roll's camera report.</summary>
public sealed record CameraReportFacts(PaperHead Head) : PaperFacts(Head)
{
    public required string Roll { get; init; }
    public required string Day { get; init; }
    public required StockFacts Stock { get; init; }
    public required string Rated { get; init; }
    public required string Gauge { get; init; }
    public required string Process { get; init; }
    public required string Push { get; init; }

    /// <summary>Whether the push is to be printed prominently.</summary>
    public required bool IsPushed { get; init; }

    /// <summary>How much is exposed.</summary>
    public required string Exposed { get; init; }

    /// <summary>Of how much that was loaded; empty where it is all of it.</summary>
    public required string OfLoaded { get; init; }

    /// <summary>What the lab is to do with it.</summary>
    public required string ToDo { get; init; }

    /// <summary>Which takes to scan, in a sentence; empty where no scan is ordered.</summary>
    public required string ScanTakes { get; init; }

    /// <summary>Why the lab must not process it; empty where it is to.</summary>
    public required string DoNotProcess { get; init; }

    /// <summary>What costs film if nobody reads it, as on the can's label: X-rays, fog, effects, a head that is outside.</summary>
    public required ImmutableArray<string> Warnings { get; init; }

    /// <summary>Where the fog is, and what X-rays do to film, a sentence each.</summary>
    public required ImmutableArray<string> WarningsSay { get; init; }

    /// <summary>Whether a negative's bath would ruin it, so that the process stands out.</summary>
    public required bool IsReversal { get; init; }

    /// <summary>Whether the process stands out in the larger type without breaking its word.</summary>
    public bool IsShortProcess => Process.Length <= MostInInverse;

    /// <summary>Whether it takes two places of the band.</summary>
    public bool IsWideProcess => Process.Length > MostInOnePlace;

    // Letters of the larger type, white on black, in a fifth of the page and in a third.
    const int MostInOnePlace = 8,
        MostInInverse = 18;

    public required string Body { get; init; }
    public required string LoadedBy { get; init; }
    public required string LoadedOn { get; init; }
    public required string UnloadedOn { get; init; }
    public required string UnloadedBy { get; init; }
    public required string Threading { get; init; }

    /// <summary>That the roll is still in a camera, so that its figures will change; empty once it is unloaded.</summary>
    public required string StillLoaded { get; init; }

    /// <summary>What whoever opens the can must know.</summary>
    public required string Caution { get; init; }
    public required string LabNotes { get; init; }
    public required ImmutableArray<LogColumn> Columns { get; init; }

    /// <summary>How many columns an event's line spans: all but the number.</summary>
    public string EventSpan => PaperFormat.Number(Columns.Length - 1);

    /// <summary>Whether there are so many lines or columns that they are set smaller.</summary>
    public required bool IsDense { get; init; }
    public required ImmutableArray<ImmutableSortedDictionary<string, object>> Rows { get; init; }
    public required TallyFacts Tally { get; init; }
    public required string GoodScreenTime { get; init; }
    public required string Passes { get; init; }

    /// <summary>Effects without a picture, in words.</summary>
    public required ImmutableArray<string> Effects { get; init; }
    public required ImmutableArray<WaiverFacts> Waivers { get; init; }
    public required Markup Strip { get; init; }
    public required ImmutableArray<Markup> Insets { get; init; }

    /// <summary>The strip again, for a phone.</summary>
    public required Markup PhoneStrip { get; init; }

    /// <summary>The insets again, for a phone.</summary>
    public required ImmutableArray<Markup> PhoneInsets { get; init; }

    /// <summary>When it came back from the lab, and how; empty while nobody wrote it down.</summary>
    public required string CameBack { get; init; }

    /// <summary>Printer lights by slate, and what was found on the film, a line each.</summary>
    public required ImmutableArray<string> FromTheLab { get; init; }
    public required string LengthUnit { get; init; }
    public required string Dial { get; init; }
}
