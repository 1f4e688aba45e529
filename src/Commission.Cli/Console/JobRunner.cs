using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Fluids;
using Commission.Jobs;
using Commission.Source.Problems;

namespace Commission.Cli.Console;

/// <summary>Reads and evaluates job files; prints the problems of those that are wrong.</summary>
internal static class JobRunner
{
    public static EvaluatedJob? Run(string path, string? shop, DateTimeOffset? asOf, TextWriter error)
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

        // The reader gets ready while the file is fetched and parsed.
        _ = Task.Run(JobReader.Prepare);
        var problems = new ProblemList();
        var reading = JobReader.Read(JobSource.OnDisk(path, shop), RefrigerantNames.Value, problems);
        var record = reading.Job is null ? null : JobEvaluation.Evaluate(reading, asOf, ProgramVersion.Text, problems);
        if (record is not null)
            return new EvaluatedJob(path, reading, record);
        error.Write(ProblemRenderer.Render(problems, reading.TextOf));
        return null;
    }

    private static readonly Lazy<IReadOnlyCollection<string>> RefrigerantNames = new(() =>
        [.. RefrigerantCatalogue.All.SelectMany(info => info.Aliases.Prepend(info.Designation))]);
}
