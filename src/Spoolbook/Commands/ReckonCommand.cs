using System.CommandLine;
using Spoolbook.Printing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook reckon</c>: the trade's sums, without a production.</summary>
internal static class ReckonCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var json = new Option<bool>("--json")
        {
            Description = "Print for programs: the same lines as JSON, with their numbers not rounded.",
            Recursive = true,
        };
        return new Command("reckon", "Works out lengths, times, exposures, depth of field, spools and time-lapses, and shows how.")
        {
            json,
            Acting(ReckonLength.Build()),
            Acting(ReckonTime.Build()),
            Acting(ReckonExposure.Build()),
            Acting(ReckonDepth.Build()),
            Acting(ReckonSpool.Build()),
            Acting(ReckonLapse.Build()),
        };

        Command Acting((Command Command, Func<ParseResult, ReckonAnswer> Reckon) sum)
        {
            sum.Command.SetAction(parsed => Print(parsed, Answer(parsed, sum.Reckon), parsed.GetValue(json), around));
            return sum.Command;
        }
    }

    static ReckonAnswer Answer(ParseResult parsed, Func<ParseResult, ReckonAnswer> reckon)
    {
        try
        {
            return reckon(parsed);
        }
        catch (OverflowException)
        {
            return ReckonAnswer.Not("that is more film than there can be: give smaller figures");
        }
    }

    static int Print(ParseResult parsed, ReckonAnswer answer, bool json, CommandEnvironment around)
    {
        if (answer.Reckoning is not { } reckoning)
        {
            return WrongUse.Print([answer.Objection], parsed, around);
        }

        if (json)
        {
            around.Out.WriteLine(ReckoningJson.Write(reckoning));
        }
        else
        {
            ReckoningPrinter.Print(reckoning, around);
        }

        return ExitStatus.Well;
    }
}
