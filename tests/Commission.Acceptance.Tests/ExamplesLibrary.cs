using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Fluids;
using Commission.Jobs;
using Commission.Jobs.Files;
using Commission.Records.Findings;
using Commission.Source;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>The examples, each read and evaluated once; and the same examples with other words in their job file.</summary>
internal static class ExamplesLibrary
{
    private static readonly ConcurrentDictionary<string, Lazy<ImmutableArray<Finding>>> Evaluated = new(StringComparer.Ordinal);

    /// <summary>Names of the examples, for theories.</summary>
    public static TheoryData<string> Names { get; } = [.. Repository.Examples];

    /// <summary>The text of an example's job file.</summary>
    public static string Text(string example) => File.ReadAllText(Repository.PathTo("examples", example, "job.yaml"));

    /// <summary>An example, with its own job file or with another text in its place.</summary>
    public static JobReading Read(string example, string? text = null)
    {
        var folder = new Folder(new DiskFolder(Repository.PathTo("examples", example)), text);
        return JobReader.Read(new JobSource("job.yaml", "job.yaml", folder, null), RefrigerantCatalogue.Names, new ProblemList());
    }

    /// <summary>A context over a job that was read.</summary>
    public static CheckContext Context(JobReading reading) => new(reading.Job!, new CheckSettings(reading.Job!.Identity.Date.Value));

    /// <summary>Every finding of an example as it is.</summary>
    public static ImmutableArray<Finding> Findings(string example) =>
        Evaluated.GetOrAdd(example, name => new(() => RecordBuilder.Evaluate(Context(Read(name))))).Value;

    /// <summary>Findings with a name each: check, subject, and a count where both are the same.</summary>
    public static IEnumerable<(string Key, Finding Finding)> Keyed(IEnumerable<Finding> findings)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var finding in findings)
        {
            var name = finding.Subject is null ? finding.Check : $"{finding.Check} ({finding.Subject})";
            var times = seen[name] = seen.GetValueOrDefault(name) + 1;
            yield return (times == 1 ? name : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name} #{times}"), finding);
        }
    }

    // The example's own folder with the job file replaced.
    private sealed class Folder(DiskFolder disk, string? text) : IJobFolder
    {
        public FolderFile Read(string path, long mostBytes) =>
            text is not null && path == "job.yaml" ? FolderFile.Of(Encoding.UTF8.GetBytes(text)) : disk.Read(path, mostBytes);
    }
}
