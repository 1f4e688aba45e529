using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Source;

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
