using System.CommandLine;
using Commission.Cli.Commands;
using Commission.Cli.Running;
using Commission.Messages;
using Commission.Source;

namespace Commission.Cli;

/// <summary>The program below the process: arguments in, text and an exit code out, so that tests can run it in place.</summary>
public static class CommissionProgram
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">The command line without the program's name.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="error">Where problems go.</param>
    /// <param name="environment">A variable of the environment; null asks the process.</param>
    /// <returns>0 accepted, 1 not accepted or incomplete, 2 the file or the command line is wrong, 3 our fault.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error, Func<string, string?>? environment = null)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(error);
        environment ??= Environment.GetEnvironmentVariable;
        var streams = new CommandStreams(output, error, TerminalLanguage.Of(args, environment), environment);
        var root = CommandCatalogue.Build(streams);
        try
        {
            // A token "@x" is a file name here, not a file of arguments.
            var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0)
            {
                foreach (var fault in parsed.Errors)
                    error.WriteLine($"commission: {fault.Message}");
                error.WriteLine(streams.Say(CliMessages.Help));
                return ExitCode.WrongInput;
            }

            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = output, Error = error });
        }
        catch (RefusedException refused)
        {
            error.WriteLine($"commission: {streams.Say(refused.Words)}");
            return ExitCode.WrongInput;
        }
        catch (IOException fault)
        {
            error.WriteLine($"commission: {fault.Message}");
            return ExitCode.WrongInput;
        }
        catch (UnauthorizedAccessException fault)
        {
            error.WriteLine($"commission: {fault.Message}");
            return ExitCode.WrongInput;
        }
#pragma warning disable CA1031 // The one place where whatever else goes wrong becomes one line and exit code 3.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            error.WriteLine(streams.Say(CliMessages.OurFault(new(fault.GetType().Name), new(OneLine(fault.Message)))));
            if (string.Equals(environment("COMMISSION_TRACE"), "1", StringComparison.Ordinal))
                error.WriteLine(fault.StackTrace);
            return ExitCode.OurFault;
        }
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
