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

    public static EvaluatedJob? Of(string path, string? shop, DateTimeOffset? asOf, TextWriter error)
    {
        if (!File.Exists(path))
        {
            error.WriteLine(Directory.Exists(path)
                ? $"{path}: is a folder. Name the job file in it, such as {Path.Combine(path, "job.yaml")}."
                : $"{path}: there is no such file.");
            return null;
        }

        if (shop is not null && !Directory.Exists(shop))
        {
            error.WriteLine($"--shop {shop}: there is no such folder.");
            return null;
        }

        // The reader needs its schema only after the text: both get ready at the same time.
        _ = Task.Run(JobReader.Prepare);
        var problems = new ProblemList();
        var reading = JobReader.Read(JobSource.OnDisk(path, shop), RefrigerantCatalogue.Names, problems);
        var record = reading.Job is null ? null : JobEvaluation.Evaluate(reading, asOf, Program, problems);
        if (record is not null)
            return new EvaluatedJob(path, reading, record);
        error.Write(ProblemRenderer.Render(problems, reading.TextOf, Language.English));
        return null;
    }

    /// <summary>The moment a record speaks for: the option, else SOURCE_DATE_EPOCH, else none, and then the job's own day counts. The machine's clock is never asked.</summary>
    /// <param name="option">What the command line says.</param>
    /// <param name="sourceDateEpoch">What the environment says.</param>
    /// <param name="error">Told of a value that is no time: a record dated by something else than what was asked would be a false one.</param>
    /// <param name="moment">The moment; null for the day of the job.</param>
    /// <returns>False when what was asked cannot be read.</returns>
    public static bool TryAsOf(DateTimeOffset? option, string? sourceDateEpoch, TextWriter error, out DateTimeOffset? moment)
    {
        moment = option;
        if (option is not null || string.IsNullOrEmpty(sourceDateEpoch))
            return true;
        if (!long.TryParse(sourceDateEpoch, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seconds) || seconds is < 0 or > 253_402_300_799)
        {
            error.WriteLine($"SOURCE_DATE_EPOCH: \"{sourceDateEpoch}\" is not a time. Whole seconds since 1970 are expected, such as 1781784000; unset it, or state the moment with --as-of.");
            return false;
        }

        moment = DateTimeOffset.FromUnixTimeSeconds(seconds);
        return true;
    }
}
