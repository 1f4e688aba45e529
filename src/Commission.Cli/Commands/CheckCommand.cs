using System.CommandLine;
using Commission.Cli.Running;
using Commission.Messages;

namespace Commission.Cli.Commands;

/// <summary><c>commission check JOB…</c>: reads, evaluates, prints; writes nothing.</summary>
internal static class CheckCommand
{
    public static Command Build(CommandStreams streams)
    {
        var jobs = CommonOptions.Jobs(streams);
        var shop = CommonOptions.Shop(streams);
        var asOf = CommonOptions.AsOf(streams);
        var command = new Command("check", streams.Say(CliMessages.Check)) { jobs, shop, asOf };
        command.SetAction(parsed =>
        {
            if (!JobRun.TryAsOf(parsed.GetValue(asOf), streams, out var moment))
                return ExitCode.WrongInput;
            var worst = ExitCode.Accepted;
            foreach (var path in parsed.GetRequiredValue(jobs))
            {
                var evaluated = JobRun.Of(path, parsed.GetValue(shop), new(moment, parsed.GetValue<Language?>(TerminalLanguage.Option)), streams);
                if (evaluated is not null)
                    OutcomeReport.Write(evaluated.Record, streams.Output);
                worst = Math.Max(worst, evaluated?.ExitCode ?? ExitCode.WrongInput);
            }

            return worst;
        });
        return command;
    }
}
