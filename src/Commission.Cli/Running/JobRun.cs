using System.Globalization;
using System.Reflection;
using Commission.Checks.Recording;
using Commission.Fluids;
using Commission.Jobs;
using Commission.Messages;
using Commission.Records;
using Commission.Source;

namespace Commission.Cli.Running;

/// <summary>What the program tells the shell. Several jobs: the worst of them, the highest number.</summary>
internal static class ExitCode
{
    /// <summary>The job is accepted, or accepted with conditions.</summary>
    public const int Accepted = 0;

    /// <summary>The job is not accepted, or incomplete.</summary>
    public const int NotAccepted = 1;

    /// <summary>The file or the command line is wrong; nothing was written for it.</summary>
    public const int WrongInput = 2;

    /// <summary>Our fault.</summary>
    public const int OurFault = 3;
}

/// <summary>A job file with what came of it.</summary>
/// <param name="Path">The file as the user named it.</param>
/// <param name="Reading">The file as read.</param>
/// <param name="Record">The record, not sealed yet.</param>
internal sealed record EvaluatedJob(string Path, JobReading Reading, CommissioningRecord Record)
{
    /// <summary>The exit code the outcome stands for.</summary>
    public int ExitCode => Record.IsAccepted ? Running.ExitCode.Accepted : Running.ExitCode.NotAccepted;
}

/// <summary>Reads and evaluates job files; prints the problems of those that are wrong.</summary>
internal static class JobRun
{
    /// <summary>Name and version of the program, as records print them.</summary>
    private static readonly string Program =
        "Commission " + (typeof(JobRun).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0");

    public static EvaluatedJob? Of(string path, string? shop, RecordChoices choices, CommandStreams streams)
    {
        var error = streams.Error;
        if (!File.Exists(path))
        {
            error.WriteLine(streams.Say(Directory.Exists(path) ? CliMessages.IsFolder(new(path), new(Path.Combine(path, "job.yaml"))) : CliMessages.NoFile(new(path))));
            return null;
        }

        if (shop is not null && !Directory.Exists(shop))
        {
            error.WriteLine(streams.Say(CliMessages.NoShop(new(shop))));
            return null;
        }

        // The reader needs its schema only after the text: both get ready at the same time.
        _ = Task.Run(JobReader.Prepare);
        var problems = new ProblemList();
        var reading = JobReader.Read(JobSource.OnDisk(path, shop), RefrigerantCatalogue.Names, problems);
        var record = reading.Job is null ? null : JobEvaluation.Evaluate(reading, choices, Program, problems);
        if (record is not null)
            return new EvaluatedJob(path, reading, record);
        error.Write(ProblemRenderer.Render(problems, reading.TextOf, streams.Language));
        return null;
    }

    /// <summary>The moment a record speaks for: the option, else SOURCE_DATE_EPOCH, else none, and then the job's own day counts. The machine's clock is never asked.</summary>
    /// <param name="option">What the command line says.</param>
    /// <param name="streams">Told of a value of the environment that is no time: a record dated by something else than what was asked would be a false one.</param>
    /// <param name="moment">The moment; null for the day of the job.</param>
    /// <returns>False when what was asked cannot be read.</returns>
    public static bool TryAsOf(DateTimeOffset? option, CommandStreams streams, out DateTimeOffset? moment)
    {
        var sourceDateEpoch = streams.Environment("SOURCE_DATE_EPOCH");
        moment = option;
        if (option is not null || string.IsNullOrEmpty(sourceDateEpoch))
            return true;
        if (!long.TryParse(sourceDateEpoch, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seconds) || seconds is < 0 or > 253_402_300_799)
        {
            streams.Error.WriteLine(streams.Say(CliMessages.NotAnEpoch(new(sourceDateEpoch))));
            return false;
        }

        moment = DateTimeOffset.FromUnixTimeSeconds(seconds);
        return true;
    }
}
