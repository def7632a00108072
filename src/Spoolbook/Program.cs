using Spoolbook;
using Spoolbook.Papers;

if (args is ["make", ..])
{
    PrintingWarmUp.Start();
}

return SpoolbookApp.Run(args, CommandEnvironment.OfThisProcess());
