using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Limits;
using Commission.Jobs;
using Commission.Jobs.Model;
using Commission.Records;
using Commission.Source;
using Commission.Source.Problems;

namespace Commission.Checks.Recording;

/// <summary>From a job file that was read to its record: brings in the job's own limit packs, runs every check, seals the result.</summary>
public static class JobEvaluation
{
    /// <summary>Evaluates a job.</summary>
    /// <param name="reading">The job file as read; it holds a job.</param>
    /// <param name="asOf">The moment the record speaks for; null takes the day of the job.</param>
    /// <param name="program">Name and version of the program, printed in the record.</param>
    /// <param name="problems">Where faults of the job's own limit packs go.</param>
    /// <returns>The record; null when a pack of the job is wrong.</returns>
    public static CommissioningRecord? Evaluate(JobReading reading, DateTimeOffset? asOf, string program, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(problems);
        var job = reading.Job ?? throw new ArgumentException("The job file was not read.", nameof(reading));
        if (Library(reading, job, problems) is not { } library)
            return null;
        var day = asOf is { } moment ? DateOnly.FromDateTime(moment.Date) : job.Identity.Date.Value;
        var text = asOf is { } at
            ? at.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture)
            : day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return RecordBuilder.Build(
            job,
            new CheckSettings(day) { Library = library },
            new RecordInputs(program, text, [.. reading.Files.Select(f => new InputFile(f.Name, f.Content.Length, f.Sha256))], Tree(reading.Input)));
    }

    private static LimitLibrary? Library(JobReading reading, Job job, ProblemList problems)
    {
        var library = LimitLibrary.Embedded;
        var before = problems.Count;
        var own = new List<string>();
        foreach (var file in reading.Files.Where(f => f.Role == JobFileRole.Pack))
        {
            if (reading.TextOf(file.Name) is not { } text)
                continue;
            library = library.With(text, problems, out var pack);
            if (pack is not null)
                own.Add(pack.Name);
        }

        foreach (var name in job.Limits?.Packs ?? [])
        {
            // A path names a pack file, which is in the library under its own name by now.
            if (library.Find(name.Value) is not null || reading.Files.Any(f => f.Role == JobFileRole.Pack && string.Equals(f.Name, name.Value, StringComparison.Ordinal)))
                continue;
            var known = LimitLibrary.EmbeddedNames.Concat(own);
            problems.Add(new Problem(
                name.At,
                $"There is no limits pack \"{name.Value}\".",
                "",
                NearestName.Of(name.Value, known) is { } near ? $"Did you mean {near}?" : $"Known packs: {string.Join(", ", known)}."));
        }

        return problems.Count > before ? null : library;
    }

    private static ImmutableArray<InputNode> Tree(JobInput? input) => input is null ? [] : Children(input);

    private static ImmutableArray<InputNode> Children(JobInput parent) =>
        [.. parent.Children.Select((child, i) => new InputNode(parent.IsList ? (i + 1).ToString(CultureInfo.InvariantCulture) : child.Key, child.Text, child.At, Children(child)))];
}
