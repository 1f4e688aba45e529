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
        var id = new Argument<string?>("CHECK") { Description = "A check, such as charge.superheat; without one, all are listed.", Arity = ArgumentArity.ZeroOrOne };
        var job = new Argument<string?>("JOB") { Description = "A job file: its numbers are shown step by step.", Arity = ArgumentArity.ZeroOrOne };
        var shop = CommonOptions.Shop();
        var units = UnitOptions.Units();
        var trials = new Option<int>("--monte-carlo") { Description = "Trials of a Monte Carlo run beside the linear result.", HelpName = "N" };
        trials.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 10_000_000)
                result.AddError("--monte-carlo: write a number of trials from 2 to 10000000.");
        });
        var command = new Command("explain", "Explains a check: what it asks, formula, source, limits by pack, what to do when it fails.") { id, job, shop, units, trials };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(id) is not { } asked)
            {
                foreach (var each in CheckCatalogue.All)
                    streams.Output.WriteLine($"{each.Id,-38} {RecordWords.Text(each.Title(), Language.English)}");
                return ExitCode.Accepted;
            }

            if (CheckCatalogue.Named(asked) is not { } check)
            {
                var near = NearestName.Of(asked, CheckCatalogue.All.Select(c => c.Id));
                streams.Error.WriteLine($"There is no check \"{asked}\".{(near is null ? "" : $" Did you mean {near}?")} commission explain lists them.");
                return ExitCode.WrongInput;
            }

            if (parsed.GetValue(job) is not { } path)
            {
                SheetWriter.Write(ExplanationSheets.Of(check, parsed.GetRequiredValue(units), Language.English), streams.Output);
                return ExitCode.Accepted;
            }

            if (JobRun.Of(path, parsed.GetValue(shop), null, streams.Error) is not { Reading.Job: { } read })
                return ExitCode.WrongInput;
            SheetWriter.Write(ExplanationSheets.With(check, read, new CheckSettings(read.Identity.Date.Value), parsed.GetValue(trials), Language.English), streams.Output);
            return ExitCode.Accepted;
        });
        return command;
    }
}
