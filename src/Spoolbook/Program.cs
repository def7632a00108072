using Spoolbook;
using Spoolbook.Papers;

if (args is ["make", ..])
{
    GarbagePutOff.Start();
    PrintingWarmUp.Start();
}

return SpoolbookApp.Run(args, CommandEnvironment.OfThisProcess());
