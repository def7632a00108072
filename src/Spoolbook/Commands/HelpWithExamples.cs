using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Spoolbook.Printing;

namespace Spoolbook.Commands;

/// <summary>A command's help with its examples below.</summary>
internal sealed class HelpWithExamples(HelpAction usual, CommandEnvironment around) : SynchronousCommandLineAction
{
    const string Indent = "  ";

    // `--help` asks no more of the line than the command's name.
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        if (around.Wraps)
        {
            usual.MaxWidth = around.Width;
        }

        var status = usual.Invoke(parseResult);
        var command = WrongUse.NameOf(parseResult.CommandResult);
        var output = parseResult.InvocationConfiguration.Output;
        var examples = Examples.Of(command);
        if (examples.Count > 0)
        {
            output.WriteLine("Examples:");
            foreach (var (line, about) in examples)
            {
                output.WriteLine($"{Indent}spoolbook {line}");
                foreach (var part in WrappedText.On(around, $"{Indent}{Indent}{Indent}{about}", Indent.Length * 3))
                {
                    output.WriteLine(part);
                }
            }

            output.WriteLine();
        }

        output.WriteLine(Examples.More(command));
        return status;
    }
}
