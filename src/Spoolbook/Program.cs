using Spoolbook;

return SpoolbookApp.Run(args, CommandEnvironment.OfThisProcess());
