using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Fluids;
using Commission.Jobs;
using Commission.Jobs.Files;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Tests;

/// <summary>Jobs of a few lines: what every job has to say is here, a test writes the rest.</summary>
internal static partial class JobLines
{
    /// <summary>A job around some lines of its own.</summary>
    /// <param name="lines">Further parts, each from the left margin.</param>
    /// <param name="work">Kind of work.</param>
    /// <param name="system">Kind of system.</param>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <param name="equipment">More of the equipment, in flow style and with a comma before it: <c>, nameplate: {factory charge: 3 kg}</c>.</param>
    /// <param name="job">More of the job, in the same style.</param>
    /// <param name="site">More of the site, in the same style.</param>
    /// <param name="units">The units of bare numbers.</param>
    public static string Of(
        string lines = "",
        string work = "new installation",
        string system = "split",
        string refrigerant = "R-410A",
        string equipment = "",
        string job = "",
        string site = ", elevation: 0 ft",
        string units = "us") => $$"""
        commission: 1
        units: {{units}}
        job: {id: T-1, work: {{work}}, date: 2026-06-18, zone: "-06:00", site: {name: Tarn Lane{{site}}}{{job}}}
        equipment: {system: {{system}}, refrigerant: {{refrigerant}}{{equipment}}}
        {{lines}}
        """;

    /// <summary>What one check finds in a job; reviews see the findings of all the others.</summary>
    /// <param name="yaml">The job file.</param>
    /// <param name="check">Its id.</param>
    public static ImmutableArray<Finding> Findings(string yaml, string check) => CheckCatalogue.Find(check) switch
    {
        null => throw new ArgumentException($"There is no check {check}.", nameof(check)),
        IReviewCheck => [.. JobText.Evaluate(yaml).Where(f => f.Check == check)],
        _ => JobText.Evaluate(yaml, check),
    };

    /// <summary>The one finding of a check, about one subject where it speaks of several.</summary>
    /// <param name="yaml">The job file.</param>
    /// <param name="check">Its id.</param>
    /// <param name="subject">The subject; null when the check speaks once, or without one.</param>
    public static Finding Finding(string yaml, string check, string? subject = null)
    {
        var findings = Findings(yaml, check);
        return subject is null && findings is [var only] ? only : findings.Single(f => f.Subject == subject);
    }

    /// <summary>The keys of the job file whose values a finding names, in its order and each once: what it says that it rests on.</summary>
    /// <param name="yaml">The job file.</param>
    /// <param name="finding">The finding.</param>
    public static IEnumerable<string> Keys(string yaml, Finding finding)
    {
        var lines = yaml.Split('\n');
        return finding.Readings.Select(r => Key().Match(lines[r.At.Line - 1][..(r.At.Column - 1)]).Groups["key"].Value).Distinct(StringComparer.Ordinal);
    }

    [GeneratedRegex(@"(?<key>[A-Za-z][\w -]*):(?!.*[A-Za-z][\w -]*:)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Key();

    /// <summary>The whole record of a job.</summary>
    /// <param name="yaml">The job file.</param>
    /// <param name="files">Files beside it: name and text.</param>
    public static CommissioningRecord Record(string yaml, params ReadOnlySpan<(string Name, string Text)> files)
    {
        var folder = new Folder();
        foreach (var (name, text) in files)
            folder.Files[name] = DrawnPhoto.OrText(name, text);
        folder.Files["job.yaml"] = Encoding.UTF8.GetBytes(yaml);
        var problems = new ProblemList();
        var reading = JobReader.Read(new JobSource("job.yaml", "job.yaml", folder, null), RefrigerantCatalogue.Names, problems);
        return (reading.Job is null ? null : JobEvaluation.Evaluate(reading, new RecordChoices(), "test", problems))
            ?? throw new InvalidDataException(string.Join(Environment.NewLine, problems.Sorted()));
    }

    private sealed class Folder : IJobFolder
    {
        public Dictionary<string, byte[]> Files { get; } = new(StringComparer.Ordinal);

        public FolderFile Read(string path, long mostBytes) =>
            Files.TryGetValue(path, out var bytes) ? FolderFile.Of(bytes) : FolderFile.Not(FolderFileState.Missing);
    }
}
