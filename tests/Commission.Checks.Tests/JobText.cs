using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Fluids;
using Commission.Jobs;
using Commission.Jobs.Files;
using Commission.Jobs.Model;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Tests;

/// <summary>Jobs of the tests as a crew writes them: YAML text through the reader of the product.</summary>
internal static class JobText
{

    /// <summary>Reads a job; a problem fails the test with its own words.</summary>
    /// <param name="yaml">The job file.</param>
    /// <param name="files">Further files beside it: name and text, of a photo the words it is drawn from.</param>
    public static Job Read(string yaml, params (string Name, string Text)[] files)
    {
        var problems = new ProblemList();
        var folder = new Folder(files.Append(("job.yaml", yaml)));
        var reading = JobReader.Read(new JobSource("job.yaml", "job.yaml", folder, null), RefrigerantCatalogue.Names, problems);
        return reading.Job ?? throw new InvalidDataException(string.Join(Environment.NewLine, problems.Sorted()));
    }

    /// <summary>A context over a job, on the day of the job.</summary>
    /// <param name="yaml">The job file.</param>
    /// <param name="files">Files beside it.</param>
    public static CheckContext Context(string yaml, params (string Name, string Text)[] files)
    {
        var job = Read(yaml, files);
        return new CheckContext(job, new CheckSettings(job.Identity.Date.Value));
    }

    /// <summary>Every finding of a job.</summary>
    /// <param name="yaml">The job file.</param>
    public static ImmutableArray<Finding> Evaluate(string yaml) => RecordBuilder.Evaluate(Context(yaml));

    /// <summary>The findings of one check.</summary>
    /// <param name="yaml">The job file.</param>
    /// <param name="check">Id of the check.</param>
    public static ImmutableArray<Finding> Evaluate(string yaml, string check)
    {
        var found = CheckCatalogue.Find(check) ?? throw new ArgumentException($"There is no check {check}.", nameof(check));
        return [.. found.Evaluate(Context(yaml))];
    }

    /// <summary>Messages as an English record prints them, one after the other.</summary>
    /// <param name="messages">The messages; none but the last ends with a full stop.</param>
    public static string Words(params Message[] messages) => string.Join(". ", messages.Select(m => RecordWords.Text(m, Language.English)));

    private sealed class Folder(IEnumerable<(string Name, string Text)> files) : IJobFolder
    {
        private readonly Dictionary<string, byte[]> _contents = files.ToDictionary(f => f.Name, f => DrawnPhoto.OrText(f.Name, f.Text), StringComparer.Ordinal);

        // A photo that a test says nothing about is drawn from its name.
        public FolderFile Read(string path, long mostBytes) => _contents.TryGetValue(path, out var bytes)
            ? bytes.LongLength > mostBytes ? FolderFile.Not(FolderFileState.TooLong, bytes.LongLength) : FolderFile.Of(bytes)
            : Path.GetExtension(path) is ".jpg" or ".png" ? FolderFile.Of(DrawnPhoto.Of(path)) : FolderFile.Not(FolderFileState.Missing);
    }
}

/// <summary>Messages as a reader in English has them.</summary>
internal static class EnglishWords
{
    public static string Said(this Message? message) => message is null ? "" : RecordWords.Text(message, Language.English);
}

/// <summary>Words of a test as a message.</summary>
internal static class PlainWords
{
    public static Message Plain(this string words) => CommonMessages.AsWritten(new(words));
}
