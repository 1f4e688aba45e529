using System.Collections.Immutable;
using System.Security.Cryptography;
using Commission.Jobs.Files;
using Commission.Jobs.Photos;
using Commission.Jobs.Problems;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs;

/// <summary>Reads the files a job names, each once, and keeps what was read.</summary>
internal sealed class JobFiles(JobSource source, ProblemList problems)
{
    private const int Megabyte = 1024 * 1024;
    private const long MostYaml = SourceText.MaximumBytes;
    private const long MostOther = PhotoReader.MostBytes;

    private readonly Dictionary<string, JobFile?> _byName = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PhotoFacts?> _photos = new(StringComparer.Ordinal);
    private readonly List<JobFile> _files = [];
    private readonly Dictionary<string, SourceText> _texts = new(StringComparer.Ordinal);

    public ImmutableArray<JobFile> All => [.. _files];

    public IReadOnlyDictionary<string, SourceText> Texts => _texts;

    /// <summary>The job file's text; null when a problem was added.</summary>
    public SourceText? JobText()
    {
        var file = source.Folder.Read(source.FileName, MostYaml);
        var at = SourceLocation.WholeFile(source.Display);
        switch (file.State)
        {
            case FolderFileState.Read:
                Keep(source.FileName, JobFileRole.Job, file.Bytes);
                return Decode(source.Display, file.Bytes);
            case FolderFileState.TooLong:
                problems.Add(at, YamlMessages.TooLarge(Megabytes(file.Length)), null, YamlMessages.TooLargeNext, "too-large");
                return null;
            case FolderFileState.Missing:
                problems.Add(at, JobMessages.NoSuchFile, null, JobMessages.NoSuchFileNext, "no-file");
                return null;
            default:
                problems.Add(at, JobMessages.FileUnreadable, null, JobMessages.UnreadableNext, "no-file");
                return null;
        }
    }

    /// <summary>The text of a kit file or pack that a value names; null when a problem was added.</summary>
    public SourceText? Text(SourceScalar name, JobFileRole role)
    {
        if (Read(name, role, MostYaml, shopToo: true) is not { } file)
            return null;
        return _texts.TryGetValue(file.Name, out var known) ? known : Decode(file.Name, file.Content.ToArray());
    }

    /// <summary>The log that a value names; null when a problem was added.</summary>
    public JobFile? Log(SourceScalar name) => Read(name, JobFileRole.Log, MostOther, shopToo: false);

    /// <summary>Looks at the photo that a value names; what is wrong with it becomes a problem at its line.</summary>
    /// <param name="name">The value.</param>
    /// <param name="shopToo">Whether it may lie in the shop folder: what belongs to the company and not to the job.</param>
    public void Photo(SourceScalar name, bool shopToo = false)
    {
        var path = name.Text.Trim();
        // A photo is named for what it shows, and may be named for two things.
        if (IsUnsafe(name, path, shopToo) || _photos.ContainsKey(path))
            return;
        _photos[path] = null;
        using var file = Open(path, shopToo);
        if (file.Content is null)
        {
            ComplainAbout(name, path, file.State, file.Length, MostOther, shopToo);
            return;
        }

        try
        {
            var (facts, fault) = PhotoReader.Read(file.Content, MostOther);
            if (fault is not null)
                problems.Add(name.Location, fault.Found(ValueText.Short(path)), null, fault.Advice, fault.Code, name.Length);
            if (facts is null)
                return;
            _photos[path] = facts;
            _files.Add(new JobFile(path, JobFileRole.Photo, default, facts.Sha256) { Length = facts.Bytes });
        }
        catch (IOException)
        {
            ComplainAbout(name, path, FolderFileState.Unreadable, 0, MostOther, shopToo);
        }
    }

    /// <summary>Opens a photo once more that was read before, for the pages that show it.</summary>
    /// <param name="path">Its name as the job writes it.</param>
    /// <exception cref="IOException">It is gone, or can no longer be read.</exception>
    public Stream Again(string path) =>
        Open(path, shopToo: true).Content ?? throw new IOException($"{path}: the photo was there when the job was read, and can no longer be read.");

    /// <summary>What is known of a photo that was read.</summary>
    /// <param name="name">Its name as the job writes it.</param>
    public PhotoFacts? PhotoOf(string name) => _photos.GetValueOrDefault(name);

    private OpenFile Open(string path, bool shopToo)
    {
        var file = source.Folder.Open(path, MostOther);
        if (!shopToo || file.State != FolderFileState.Missing || source.Shop is not { } shop)
            return file;
        file.Dispose();
        return shop.Open(path, MostOther);
    }

    private bool IsUnsafe(SourceScalar name, string path, bool shopToo)
    {
        if (UnsafePath(path) is not { } why)
            return false;
        Complain(name, JobMessages.FileName(ValueText.Short(path), why), JobMessages.FileNameNext(shopToo && source.Shop is not null ? JobMessages.FileNameNextWhere.Shop : JobMessages.FileNameNextWhere.Job));
        return true;
    }

    private JobFile? Read(SourceScalar name, JobFileRole role, long most, bool shopToo)
    {
        var path = name.Text.Trim();
        if (IsUnsafe(name, path, shopToo))
            return null;
        if (_byName.TryGetValue(path, out var known))
            return known;
        var file = source.Folder.Read(path, most);
        if (shopToo && file.State == FolderFileState.Missing && source.Shop is { } shop)
            file = shop.Read(path, most);
        var result = file.State == FolderFileState.Read ? Keep(path, role, file.Bytes) : null;
        _byName[path] = result;
        if (result is null)
            ComplainAbout(name, path, file.State, file.Length, most, shopToo);
        return result;
    }

    private void ComplainAbout(SourceScalar name, string path, FolderFileState state, long length, long most, bool shopToo)
    {
        var file = ValueText.Short(path);
        switch (state)
        {
            case FolderFileState.Missing:
                Complain(name, JobMessages.FileMissing(file, shopToo && source.Shop is not null ? JobMessages.FileMissingWhere.Shop : JobMessages.FileMissingWhere.Job),
                    shopToo && source.Shop is null ? JobMessages.FileMissingShopNext : JobMessages.FileMissingNext);
                break;
            case FolderFileState.Outside:
                Complain(name, JobMessages.FileOutside(file), JobMessages.FileOutsideNext);
                break;
            case FolderFileState.TooLong:
                Complain(name, JobMessages.FileTooLarge(file, Megabytes(length), (int)(most / Megabyte)), JobMessages.FileTooLargeNext);
                break;
            default:
                Complain(name, JobMessages.NamedFileUnreadable(file), JobMessages.UnreadableNext);
                break;
        }
    }

    private static JobMessages.FileNameFault? UnsafePath(string path)
    {
        if (path.Length == 0)
            return JobMessages.FileNameFault.Empty;
        if (path[0] is '/' or '\\' or '~' || (path.Length > 1 && path[1] == ':'))
            return JobMessages.FileNameFault.Rooted;
        if (path.Contains('\\', StringComparison.Ordinal))
            return JobMessages.FileNameFault.Backslash;
        if (path.Split('/').Any(part => part is ".." or "." or ""))
            return JobMessages.FileNameFault.Leaves;
        return path.Length > 255 || path.Any(char.IsControl) ? JobMessages.FileNameFault.Unfit : null;
    }

    private SourceText? Decode(string display, byte[] bytes)
    {
        var text = SourceText.Decode(display, bytes, problems);
        if (text is not null)
            _texts[display] = text;
        return text;
    }

    private JobFile Keep(string name, JobFileRole role, byte[] bytes)
    {
        var file = new JobFile(name, role, bytes, Convert.ToHexStringLower(SHA256.HashData(bytes)));
        _files.Add(file);
        return file;
    }

    private void Complain(SourceScalar name, Message found, Message advice) =>
        problems.Add(name.Location, found, null, advice, "file", name.Length);

    private static NumberValue Megabytes(long bytes) => new((double)bytes / Megabyte, 1);
}

/// <summary>Where a job file and the files it names are read from.</summary>
/// <param name="Display">The job file as the user named it; problems show it.</param>
/// <param name="FileName">Its name inside <paramref name="Folder"/>.</param>
/// <param name="Folder">The job's own folder.</param>
/// <param name="Shop">A folder shared by jobs, for kit files and limit packs; null when none was named.</param>
public sealed record JobSource(string Display, string FileName, IJobFolder Folder, IJobFolder? Shop)
{
    /// <summary>A job file on disk.</summary>
    /// <param name="path">The file as the user named it.</param>
    /// <param name="shop">The shared folder; null when none was named.</param>
    /// <returns>The source.</returns>
    public static JobSource OnDisk(string path, string? shop)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        var full = Path.GetFullPath(path);
        return new JobSource(path, Path.GetFileName(full), new DiskFolder(Path.GetDirectoryName(full)!), shop is null ? null : new DiskFolder(shop));
    }
}

/// <summary>A file that was read for a job.</summary>
/// <param name="Name">The job file's own name, or the path as the job writes it.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Content">Its bytes; empty for a photo, of which only the hash is kept.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hexadecimal.</param>
public sealed record JobFile(string Name, JobFileRole Role, ReadOnlyMemory<byte> Content, string Sha256)
{
    /// <summary>Its length in bytes.</summary>
    public long Length { get; init; } = Content.Length;
}

/// <summary>What a file of a job is for.</summary>
public enum JobFileRole
{
    /// <summary>The job file itself.</summary>
    Job,

    /// <summary>A kit file.</summary>
    Kit,

    /// <summary>A log.</summary>
    Log,

    /// <summary>A photo.</summary>
    Photo,

    /// <summary>A limit pack.</summary>
    Pack,
}
