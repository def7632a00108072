using System.CommandLine;
using Spoolbook.Asking;
using Spoolbook.Completing;
using Spoolbook.Logging;

namespace Spoolbook.Commands;

/// <summary>What the commands that log share.</summary>
internal sealed class LogOptions
{
    readonly CommandEnvironment _around;

    public LogOptions(CommandEnvironment around)
    {
        _around = around;
        Words = new OfferingArgument<string[]>("line", new LineOffers(around).OfLine) { Arity = ArgumentArity.ZeroOrMore };
        In.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<string?>() is { } named && ProductionPlace.Objection(named, around) is { } objection)
            {
                given.AddError(objection);
            }
        });
    }

    /// <summary>The words of the line.</summary>
    public Argument<string[]> Words { get; }

    public Option<string?> In { get; } =
        new("--in")
        {
            Description = "The production. Without it, the one that you are in: here, or in the nearest folder above.",
            HelpName = "production",
        };

    public Option<bool> DryRun { get; } = new("--dry-run") { Description = "Show what would change in the files, and write nothing." };

    public Option<bool> Anyway { get; } = new("--anyway") { Description = "Write it even if it brings an error: what happened, happened." };

    public Option<LogFormat> Format { get; } = Choice.Of<LogFormat>("--format", "How the answer is written: text, or json for programs.");

    /// <summary>A command with all of them.</summary>
    public Command Command(string name, string description, string ofWords)
    {
        Words.Description = ofWords;
        var command = new Command(name, description) { Words, In, DryRun, Anyway, Format };
        command.Validators.Add(given =>
        {
            if (given.GetValue(In) is null && ProductionPlace.Here(_around) is null)
            {
                given.AddError("there is no production.yaml here or in a folder above. Name the production: --in FOLDER.");
            }
        });
        return command;
    }

    /// <summary>What was asked for.</summary>
    public LogSettings Settings(ParseResult parsed) =>
        new(
            ProductionPlace.Of(parsed.GetValue(In), _around)!,
            parsed.GetValue(DryRun),
            parsed.GetValue(Anyway),
            parsed.GetValue(Format) == LogFormat.Json
        );

    /// <summary>Where answers and lines are typed.</summary>
    public static ILineSource Lines(CommandEnvironment around) =>
        around.Key is { } key ? new LineEditor(key, around.Out, around.Width) : new PipedLines(around.In);
}
