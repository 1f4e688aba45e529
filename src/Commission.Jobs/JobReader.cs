using System.Collections.Immutable;
using Commission.Jobs.Binding;
using Commission.Jobs.Files;
using Commission.Jobs.Logs;
using Commission.Jobs.Meaning;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Schema;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Jobs;

/// <summary>Turns a job file into a <see cref="Job"/>, or into every problem it has, each at its line and column.</summary>
public static class JobReader
{
    /// <summary>
    /// Reads a job file and the kit files, logs, photos and packs it names.
    /// A file that is not YAML reports its first fault; any other file reports all of them.
    /// </summary>
    /// <param name="source">The file and the folders it may read from.</param>
    /// <param name="refrigerantNames">Designations of the refrigerants the program can compute; the canonical spellings.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>The job, or none when at least one problem was added; and what was read.</returns>
    public static JobReading Read(JobSource source, IReadOnlyCollection<string> refrigerantNames, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(refrigerantNames);
        ArgumentNullException.ThrowIfNull(problems);
        // The schema's evaluator takes longest to get ready: it does so while the text is read.
        _ = Task.Run(SchemaCheck.Prepare);
        var before = problems.Count;
        var files = new JobFiles(source, problems);
        if (ReadRoot(files, source.Display, problems) is not { } root) return new JobReading(null, null, files.All, files.Texts);

        var rejected = new HashSet<SourceNode>(ReferenceEqualityComparer.Instance);
        SchemaCheck.Job(root, problems, rejected);
        var kits = new KitExpansion(files, problems, rejected);
        root = kits.Expand(root);

        var context = new BindingContext(problems, rejected, refrigerantNames);
        var binder = new PartBinder(context);
        ReadUnits(context, binder, source.Display, root, kits);
        var job = (Job)binder.Bind(typeof(Job), root, JobSchema.Instance.Root)!;
        job = ReadTimesAndLogs(job, root, files, context, problems);
        ReadOtherFiles(root, files, rejected);
        MeaningRules.Check(new RuleContext(job, problems));
        return problems.Count > before
            ? new JobReading(null, null, files.All, files.Texts)
            : new JobReading(job, InputTree.Of(root, context.Canonical), files.All, files.Texts);
    }

    private static SourceMapping? ReadRoot(JobFiles files, string display, ProblemList problems)
    {
        if (files.JobText() is not { } text || YamlReader.Read(text, problems) is not { } node) return null;
        if (node is SourceMapping mapping) return mapping;
        problems.Add(node.Location, "This is not a job file.", "Keys are expected: commission, job, equipment and others.", $"Begin {display} with commission: 1.", "wrong-type", node.Length);
        return null;
    }

    private static void ReadUnits(BindingContext context, PartBinder binder, string display, SourceMapping root, KitExpansion kits)
    {
        var field = JobSchema.Instance.Root.GetProperty("properties").GetProperty("units");
        UnitDefaults Defaults(SourceNode? node)
        {
            if (node is null) return UnitDefaults.None;
            return binder.Bind(typeof(UnitChoice), node, field) is UnitChoice { Preset: not null } choice ? UnitDefaults.Of(choice) : UnitDefaults.NotUnderstood;
        }

        context.Units[display] = Defaults(root.Find("units")?.Value);
        foreach (var (file, units) in kits.UnitsByFile) context.Units[file] = Defaults(units);
    }

    private static Job ReadTimesAndLogs(Job job, SourceMapping root, JobFiles files, BindingContext context, ProblemList problems)
    {
        var zone = job.Identity?.Zone is { } named ? JobZone.Find(named.Value) ?? JobZone.Unnamed : JobZone.Unnamed;
        var date = job.Identity?.Date?.Value ?? DateOnly.MinValue.AddYears(2000);
        var clock = new JobClock(zone, date, problems);
        clock.ResolveClocks(job);

        LogFile? Load(LogFile? log, Dimension dimension, string group, JobTime? started, params ReadOnlySpan<string> path)
        {
            if (log?.File is null || NodeAt(root, path) is not { } name || files.Binary(name, JobFileRole.Log) is not { } file) return log;
            var usual = context.UnitsAt(name).ForGroup(group, dimension);
            var data = LogReader.Read(log, file.Content.Span, dimension, usual, zone, started?.Clock, date, problems);
            return log with { Data = data is { Start: null } ? data with { Start = started?.Clock } : data };
        }

        if (job.Evacuation is { Series: { } series } evacuation)
        {
            job = job with
            {
                Evacuation = evacuation with { Series = Load(series, Dimension.VacuumLevel, "vacuum", evacuation.Started?.Value, "evacuation", "series") },
            };
        }

        if (job.PressureTest is { Tightness: { } hold } test)
        {
            var began = hold.From?.At?.Value ?? test.Started?.Value;
            job = job with
            {
                PressureTest = test with
                {
                    Tightness = hold with
                    {
                        Series = Load(hold.Series, Dimension.Pressure, "pressure", began, "pressure test", "tightness", "series"),
                        TemperatureSeries = Load(hold.TemperatureSeries, Dimension.Temperature, "temperature", began, "pressure test", "tightness", "temperature series"),
                    },
                },
            };
        }

        clock.ResolveElapsed(job);
        return job;
    }

    // A file is read where it is named, also when something beside it is wrong: all problems at once.
    private static void ReadOtherFiles(SourceMapping root, JobFiles files, HashSet<SourceNode> rejected)
    {
        foreach (var photo in (root.Find("photos")?.Value as SourceSequence)?.Items ?? [])
        {
            if ((photo as SourceMapping)?.Find("file")?.Value is SourceScalar name && !rejected.Contains(name)) files.Binary(name, JobFileRole.Photo);
        }

        var packs = (root.Find("limits")?.Value as SourceMapping)?.Find("packs")?.Value;
        foreach (var pack in packs is SourceSequence list ? list.Items : packs is null ? [] : [packs])
        {
            if (pack is SourceScalar name && !rejected.Contains(name) && name.Text.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase)) files.Text(name, JobFileRole.Pack);
        }
    }

    // The scalar with a log's file name: the value itself, or its key "file".
    private static SourceScalar? NodeAt(SourceMapping root, ReadOnlySpan<string> path)
    {
        SourceNode? node = root;
        foreach (var key in path) node = (node as SourceMapping)?.Find(key)?.Value;
        return node as SourceScalar ?? (node as SourceMapping)?.Find("file")?.Value as SourceScalar;
    }
}
