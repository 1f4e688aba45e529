using System.Collections.Immutable;
using Commission.Jobs.Binding;
using Commission.Jobs.Meaning;
using Commission.Jobs.Model;
using Commission.Jobs.Schema;
using Commission.Messages;
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
            return new JobReading(null, null, files);

        var rejected = new HashSet<SourceNode>(ReferenceEqualityComparer.Instance);
        SchemaCheck.Job(root, problems, rejected);
        var kits = new KitExpansion(files, problems, rejected);
        root = kits.Expand(root);

        var context = new BindingContext(problems, rejected, refrigerants, name => files.Log(name)?.Content);
        var binder = new PartBinder(context);
        ReadUnits(context, binder, source.Display, root, kits);
        var job = binder.BindJob(root)!;
        ReadOtherFiles(root, files, rejected);
        if (!job.Photos.IsEmpty)
            job = job with { Photos = [.. job.Photos.Select(p => p with { Picture = files.PhotoOf(p.File?.Value ?? "") })] };
        MeaningRules.Check(new RuleContext(job, problems));
        return problems.Count > before
            ? new JobReading(null, null, files)
            : new JobReading(job, JobInput.Of(root, context.Canonical), files);
    }

    /// <summary>Makes the schema's evaluator ready, which takes longer than reading a file; a program may do so beside other work. Reading does it when it was not done.</summary>
    public static void Prepare() => SchemaCheck.Prepare();

    private static SourceMapping? ReadRoot(JobFiles files, string display, ProblemList problems)
    {
        if (files.JobText() is not { } text || YamlReader.Read(text, problems) is not { } node)
            return null;
        if (node is SourceMapping mapping)
            return mapping;
        problems.Add(node.Location, JobMessages.NotAJobFile, JobMessages.NotAJobFileExpected, JobMessages.NotAJobFileNext(new(display), new("commission: 1")), "wrong-type", node.Length);
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
                files.Photo(name);
        }

        if (((root.Find("job")?.Value as SourceMapping)?.Find("people")?.Value as SourceMapping)?.Find("logo")?.Value is SourceScalar logo && !rejected.Contains(logo))
            files.Photo(logo, shopToo: true);
        var packs = (root.Find("limits")?.Value as SourceMapping)?.Find("packs")?.Value;
        foreach (var pack in packs is SourceSequence list ? list.Items : packs is null ? [] : [packs])
        {
            if (pack is SourceScalar name && !rejected.Contains(name) && name.Text.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase))
                files.Text(name, JobFileRole.Pack);
        }
    }
}

/// <summary>What came of reading a job file.</summary>
public sealed class JobReading
{
    private readonly JobFiles _files;

    internal JobReading(Job? job, JobInput? input, JobFiles files)
    {
        Job = job;
        Input = input;
        Files = files.All;
        _files = files;
    }

    /// <summary>The job; null when at least one problem was found.</summary>
    public Job? Job { get; }

    /// <summary>The job as it was read, for the record; null when there is no job.</summary>
    public JobInput? Input { get; }

    /// <summary>Every file that was read: the job file, then kit files, logs, photos and packs, each once and within its kind in the order in which the job names them.</summary>
    public ImmutableArray<JobFile> Files { get; }

    /// <summary>The text of a file that was read, for showing the lines of problems.</summary>
    /// <param name="file">The file as a location names it.</param>
    /// <returns>The text, or null when there is none.</returns>
    public SourceText? TextOf(string file) => _files.Texts.GetValueOrDefault(file);

    /// <summary>Opens a photo of the job once more: reading it kept nothing but what it is.</summary>
    /// <param name="name">Its name as the job writes it.</param>
    /// <returns>Its bytes; whoever asks closes it.</returns>
    /// <exception cref="IOException">It is gone, or can no longer be read.</exception>
    public Stream OpenPhoto(string name) => _files.Again(name);
}

/// <summary>A piece of the job as it was read, without types: what the record keeps of it. A kit file's instruments and people are in it.</summary>
/// <param name="Key">The key; empty for an item of a list.</param>
/// <param name="Text">The canonical text; null for a mapping or a list.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Children">Entries of a mapping or items of a list, in the order written.</param>
public sealed record JobInput(string Key, string? Text, SourceLocation At, ImmutableArray<JobInput> Children)
{
    /// <summary>Whether the children are items of a list.</summary>
    public bool IsList { get; init; }

    /// <summary>The tree of what was read.</summary>
    /// <param name="root">The file.</param>
    /// <param name="canonical">The canonical texts, where they differ from what was written.</param>
    internal static JobInput Of(SourceMapping root, IReadOnlyDictionary<SourceScalar, string> canonical) => Of("", root, canonical);

    private static JobInput Of(string key, SourceNode node, IReadOnlyDictionary<SourceScalar, string> canonical) => node switch
    {
        SourceScalar scalar => new JobInput(key, canonical.GetValueOrDefault(scalar, scalar.Text), node.Location, []),
        SourceMapping mapping => new JobInput(key, null, node.Location, [.. mapping.Entries.Select(e => Of(e.Key.Text, e.Value, canonical))]),
        SourceSequence sequence => new JobInput(key, null, node.Location, [.. sequence.Items.Select(i => Of("", i, canonical))]) { IsList = true },
        _ => throw new InvalidOperationException(),
    };
}
