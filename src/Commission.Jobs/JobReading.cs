using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs;

/// <summary>What came of reading a job file.</summary>
public sealed class JobReading
{
    private readonly IReadOnlyDictionary<string, SourceText> _texts;

    internal JobReading(Job? job, JobInput? input, ImmutableArray<JobFile> files, IReadOnlyDictionary<string, SourceText> texts)
    {
        Job = job;
        Input = input;
        Files = files;
        _texts = texts;
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
    public SourceText? TextOf(string file) => _texts.GetValueOrDefault(file);
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
