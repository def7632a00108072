using System.CommandLine;
using Spoolbook.Printing;

namespace Spoolbook.Commands;

/// <summary>The options on how much is said of findings, and which of them make a command fail.</summary>
internal sealed class SayOptions
{
    readonly Option<bool> _quiet = new("--quiet", "-q") { Description = "Print errors only, and nothing where there are none." };

    readonly Option<bool> _verbose = new("--verbose", "-v")
    {
        Description = "Also print what was accepted and why, and every place that could not be judged.",
    };

    readonly Option<bool> _strict = new("--strict") { Description = "Count a warning as an error: it ends with status 1." };

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(_quiet);
        command.Add(_verbose);
        command.Add(_strict);
        command.Validators.Add(given =>
        {
            if (given.GetValue(_quiet) && given.GetValue(_verbose))
            {
                given.AddError("--quiet and --verbose are opposites: leave one of them out.");
            }
        });
    }

    /// <summary>How much is said.</summary>
    public Loudness Loudness(ParseResult parsed) =>
        parsed.GetValue(_quiet) ? Printing.Loudness.Quiet
        : parsed.GetValue(_verbose) ? Printing.Loudness.Verbose
        : Printing.Loudness.Usual;

    /// <summary>Whether warnings make it fail.</summary>
    public bool IsStrict(ParseResult parsed) => parsed.GetValue(_strict);
}
