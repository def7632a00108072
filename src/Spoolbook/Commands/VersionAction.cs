using System.CommandLine;
using System.CommandLine.Invocation;

namespace Spoolbook.Commands;

/// <summary>What <c>--version</c> prints: the name and the number.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine($"spoolbook {ProgramVersion.Text}");
        return ExitStatus.Well;
    }
}
