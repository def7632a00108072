using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Printing;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook;

/// <summary>What is said when an exception gets out of a command: what was found so far, and one sentence.</summary>
internal static class LastResort
{
    /// <summary>The environment variable that asks for the stack trace.</summary>
    public const string Trace = "SPOOLBOOK_TRACE";

    /// <summary>Prints it; returns the exit status.</summary>
    public static int Say(Exception broken, CommandEnvironment around)
    {
        // What happened is innermost.
        var first = broken.GetBaseException();
        var progress = around.Progress;
        var place = new Place(progress.Found?.Sources.Names.FirstOrDefault() ?? progress.File ?? "production.yaml", 1, 1, 0);
        try
        {
            PrintFound(progress, Fault.OfStep(progress.Doing, place, first));
        }
        catch (Exception again) when (again is not (IOException or UnauthorizedAccessException))
        {
            // What broke may be in the findings themselves: the sentence is said all the same.
        }

        var file = progress.File is { } named ? $" {Plain.Escaped(named)}" : "";
        around.Error.WriteLine(
            $"spoolbook: it broke while {progress.Doing}{file} ({first.GetType().Name}): this is a mistake in Spoolbook, not in your "
                + "files. Nothing that was made is lost: each file is as it was, or whole and new. Report it to whoever gave you "
                + $"Spoolbook, with the production and what {Trace}=1 prints when you run the same again."
        );
        if (around.Trace)
        {
            around.Error.WriteLine(broken.ToString());
        }

        return ExitStatus.Broken;
    }

    /// <summary>Prints what was found so far, unless it is printed already, and what else is to be said in the same form.</summary>
    public static void PrintFound(Progress progress, params ImmutableArray<Finding> more)
    {
        if (progress is { Print: { } print } && (progress.Found is not null || !more.IsEmpty))
        {
            var found = progress.Found ?? CheckedProduction.Nothing;
            print(found with { Findings = [.. found.Findings, .. more], IsUnfinished = true });
        }
    }
}
