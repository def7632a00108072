using Spoolbook;

return QuickCommands.Run(args, Surroundings.OfThisProcess(), WholeProgram.Run);
