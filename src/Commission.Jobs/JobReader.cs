using Commission.Jobs.Binding;
using Commission.Jobs.Meaning;
using Commission.Jobs.Model;
using Commission.Jobs.Schema;
using Commission.Source;
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
    /// <param name="refrigerants">Names of the refrigerants the program knows, with the designation that the job holds for each.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>The job, or none when at least one problem was added; and what was read.</returns>
    public static JobReading Read(JobSource source, IReadOnlyDictionary<string, string> refrigerants, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(refrigerants);
        ArgumentNullException.ThrowIfNull(problems);
        var before = problems.Count;
        var files = new JobFiles(source, problems);
        if (ReadRoot(files, source.Display, problems) is not { } root)
            return new JobReading(null, null, files.All, files.Texts);

        var rejected = new HashSet<SourceNode>(ReferenceEqualityComparer.Instance);
        SchemaCheck.Job(root, problems, rejected);
        var kits = new KitExpansion(files, problems, rejected);
        root = kits.Expand(root);

        var context = new BindingContext(problems, rejected, refrigerants, name => files.Binary(name, JobFileRole.Log)?.Content);
        var binder = new PartBinder(context);
        ReadUnits(context, binder, source.Display, root, kits);
        var job = binder.BindJob(root)!;
        ReadOtherFiles(root, files, rejected);
        MeaningRules.Check(new RuleContext(job, problems));
        return problems.Count > before
            ? new JobReading(null, null, files.All, files.Texts)
            : new JobReading(job, JobInput.Of(root, context.Canonical), files.All, files.Texts);
    }

    /// <summary>Makes the schema's evaluator ready, which takes longer than reading a file; a program may do so beside other work. Reading does it when it was not done.</summary>
    public static void Prepare() => SchemaCheck.Prepare();

    private static SourceMapping? ReadRoot(JobFiles files, string display, ProblemList problems)
    {
        if (files.JobText() is not { } text || YamlReader.Read(text, problems) is not { } node)
            return null;
        if (node is SourceMapping mapping)
            return mapping;
        problems.Add(node.Location, "This is not a job file.", "Keys are expected: commission, job, equipment and others.", $"Begin {display} with commission: 1.", "wrong-type", node.Length);
        return null;
    }

    private static void ReadUnits(BindingContext context, PartBinder binder, string display, SourceMapping root, KitExpansion kits)
    {
        UnitDefaults Defaults(SourceNode? node)
        {
            if (node is null)
                return UnitDefaults.None;

            // The exceptions are read with the advice of their own preset.
            if ((node as SourceMapping)?.Find("preset")?.Value is SourceScalar preset)
                context.Units[node.Location.File] = UnitDefaults.OfPreset(preset.Text);
            return binder.BindUnitChoice(node) is { Preset: not null } choice ? UnitDefaults.Of(choice) : UnitDefaults.NotUnderstood;
        }

        context.Units[display] = Defaults(root.Find("units")?.Value);
        foreach (var (file, units) in kits.UnitsByFile)
            context.Units[file] = Defaults(units);
    }

    // A file is read where it is named, also when something beside it is wrong: all problems at once.
    private static void ReadOtherFiles(SourceMapping root, JobFiles files, HashSet<SourceNode> rejected)
    {
        foreach (var photo in (root.Find("photos")?.Value as SourceSequence)?.Items ?? [])
        {
            if ((photo as SourceMapping)?.Find("file")?.Value is SourceScalar name && !rejected.Contains(name))
                files.Binary(name, JobFileRole.Photo);
        }

        var packs = (root.Find("limits")?.Value as SourceMapping)?.Find("packs")?.Value;
        foreach (var pack in packs is SourceSequence list ? list.Items : packs is null ? [] : [packs])
        {
            if (pack is SourceScalar name && !rejected.Contains(name) && name.Text.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase))
                files.Text(name, JobFileRole.Pack);
        }
    }
}
