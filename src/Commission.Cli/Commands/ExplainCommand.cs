using System.CommandLine;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Checks.Sheets;
using Commission.Cli.Running;
using Commission.Messages;
using Commission.Records;
using Commission.Source;

namespace Commission.Cli.Commands;

/// <summary><c>commission explain CHECK [JOB]</c>: what a check asks; with a job, its numbers step by step.</summary>
internal static class ExplainCommand
{
    public static Command Build(CommandStreams streams)
    {
        var id = new Argument<string?>("CHECK") { Description = streams.Say(CliMessages.ExplainCheck), Arity = ArgumentArity.ZeroOrOne };
        var job = new Argument<string?>("JOB") { Description = streams.Say(CliMessages.ExplainJob), Arity = ArgumentArity.ZeroOrOne };
        var shop = CommonOptions.Shop(streams);
        var units = UnitOptions.Units(streams);
        var trials = new Option<int>("--monte-carlo") { Description = streams.Say(CliMessages.MonteCarlo), HelpName = "N" };
        trials.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 10_000_000)
                result.AddError(streams.Say(CliMessages.TrialsRange));
        });
        var command = new Command("explain", streams.Say(CliMessages.Explain)) { id, job, shop, units, trials };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(id) is not { } asked)
            {
                foreach (var each in CheckCatalogue.All)
                    streams.Output.WriteLine($"{each.Id,-38} {RecordWords.Text(each.Title(), streams.Language)}");
                return ExitCode.Accepted;
            }

            if (CheckCatalogue.Named(asked) is not { } check)
            {
                var near = NearestName.Of(asked, CheckCatalogue.All.Select(c => c.Id));
                streams.Error.WriteLine(streams.Say(near is null ? CliMessages.NoCheck(new(asked)) : CliMessages.NoCheckBut(new(asked), new(near))));
                return ExitCode.WrongInput;
            }

            if (parsed.GetValue(job) is not { } path)
            {
                SheetWriter.Write(ExplanationSheets.Of(check, parsed.GetRequiredValue(units), streams.Language), streams.Output);
                return ExitCode.Accepted;
            }

            if (JobRun.Of(path, parsed.GetValue(shop), new(null, streams.Language), streams) is not { Reading.Job: { } read })
                return ExitCode.WrongInput;
            SheetWriter.Write(ExplanationSheets.With(check, read, new CheckSettings(read.Identity.Date.Value) { Language = streams.Language }, parsed.GetValue(trials), streams.Language), streams.Output);
            return ExitCode.Accepted;
        });
        return command;
    }
}
