using Spoolbook;

if (args is ["make", ..])
{
    GarbagePutOff.Start();
}

return SpoolbookApp.Run(args, CommandEnvironment.OfThisProcess());
