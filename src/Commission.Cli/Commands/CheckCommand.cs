using System.CommandLine;
using Commission.Cli.Running;

namespace Commission.Cli.Commands;

/// <summary><c>commission check JOB…</c>: reads, evaluates, prints; writes nothing.</summary>
internal static class CheckCommand
{
    public static Command Build(CommandStreams streams)
    {
        var jobs = CommonOptions.Jobs();
        var shop = CommonOptions.Shop();
        var asOf = CommonOptions.AsOf();
        var command = new Command("check", "Checks job files and prints the outcome; writes nothing.") { jobs, shop, asOf };
        command.SetAction(parsed =>
        {
            if (!JobRun.TryAsOf(parsed.GetValue(asOf), Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH"), streams.Error, out var moment))
                return ExitCode.WrongInput;
            var worst = ExitCode.Accepted;
            foreach (var path in parsed.GetRequiredValue(jobs))
            {
                var evaluated = JobRun.Of(path, parsed.GetValue(shop), moment, streams.Error);
                if (evaluated is not null)
                    OutcomeReport.Write(evaluated.Record, streams.Output);
                worst = Math.Max(worst, evaluated?.ExitCode ?? ExitCode.WrongInput);
            }

            return worst;
        });
        return command;
    }
}
