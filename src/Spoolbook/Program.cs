using Spoolbook;

return SpoolbookApp.Run(args, Surroundings.OfThisProcess());
