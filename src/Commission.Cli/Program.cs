using Commission.Cli;

return CommissionProgram.Run(args, Console.Out, Console.Error);
