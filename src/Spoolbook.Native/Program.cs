using Spoolbook;

return QuickCommands.Run(args, CommandEnvironment.OfThisProcess(), WholeProgram.Run);
