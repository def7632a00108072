using Spoolbook;
using Spoolbook.Papers;

if (args is ["make", ..])
{
    GarbagePutOff.Start();
    WarmUp.Start();
}

return SpoolbookApp.Run(args, CommandEnvironment.OfThisProcess());
