namespace Commission.Jobs.Files;

/// <summary>A folder from which a job's files are read, and nothing outside it.</summary>
public interface IJobFolder
{
    /// <summary>Reads a file of the folder.</summary>
    /// <param name="path">Path inside the folder, parts separated by <c>/</c>; never rooted, never with <c>..</c>.</param>
    /// <param name="mostBytes">A longer file is not read.</param>
    /// <returns>The bytes, or why there are none.</returns>
    FolderFile Read(string path, long mostBytes);

    /// <summary>Opens a file of the folder, for reading what need not be kept.</summary>
    /// <param name="path">Path inside the folder, as for <see cref="Read"/>.</param>
    /// <param name="mostBytes">A longer file is not opened.</param>
    /// <returns>The open file, or why there is none; whoever asked closes it.</returns>
    OpenFile Open(string path, long mostBytes)
    {
        var file = Read(path, mostBytes);
        return new OpenFile(file.State, file.State == FolderFileState.Read ? new MemoryStream(file.Bytes, writable: false) : null, file.Length);
    }
}

/// <summary>A file that was opened, or why it was not.</summary>
/// <param name="State">What became of it.</param>
/// <param name="Content">Its bytes from the first on; null unless it was opened.</param>
/// <param name="Length">Its length in bytes, when known.</param>
public sealed record OpenFile(FolderFileState State, Stream? Content, long Length) : IDisposable
{
    /// <inheritdoc/>
    public void Dispose() => Content?.Dispose();
}

/// <summary>A file that was read, or why it was not.</summary>
/// <param name="State">What became of it.</param>
/// <param name="Bytes">Its bytes; empty unless it was read.</param>
/// <param name="Length">Its length in bytes, when known.</param>
public sealed record FolderFile(FolderFileState State, byte[] Bytes, long Length)
{
    /// <summary>A file that was read.</summary>
    /// <param name="bytes">Its bytes.</param>
    /// <returns>The file.</returns>
    public static FolderFile Of(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        return new FolderFile(FolderFileState.Read, bytes, bytes.LongLength);
    }

    /// <summary>A file that was not read.</summary>
    /// <param name="state">Why.</param>
    /// <param name="length">Its length, when known.</param>
    /// <returns>The file.</returns>
    public static FolderFile Not(FolderFileState state, long length = 0) => new(state, [], length);
}

/// <summary>What became of reading a file.</summary>
public enum FolderFileState
{
    /// <summary>It was read.</summary>
    Read,

    /// <summary>There is no such file.</summary>
    Missing,

    /// <summary>It is a link that leads out of the folder.</summary>
    Outside,

    /// <summary>It is longer than allowed.</summary>
    TooLong,

    /// <summary>The system did not let it be read.</summary>
    Unreadable,
}

/// <summary>A folder on disk. A link inside it may lead to another file inside it, never outside.</summary>
public sealed class DiskFolder : IJobFolder
{
    private const int MostLinks = 40;

    private readonly string _root;

    /// <summary>Makes the folder.</summary>
    /// <param name="path">Its path; links in it are resolved once, here.</param>
    public DiskFolder(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        _root = Real(full) ?? full;
    }

    /// <inheritdoc/>
    public FolderFile Read(string path, long mostBytes)
    {
        var (state, file) = Find(path, mostBytes);
        try
        {
            return state == FolderFileState.Read ? FolderFile.Of(File.ReadAllBytes(file!.FullName)) : FolderFile.Not(state, file?.Length ?? 0);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return FolderFile.Not(FolderFileState.Unreadable);
        }
    }

    /// <inheritdoc/>
    public OpenFile Open(string path, long mostBytes)
    {
        var (state, file) = Find(path, mostBytes);
        try
        {
            return new OpenFile(state, state == FolderFileState.Read ? new FileStream(file!.FullName, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0) : null, file?.Length ?? 0);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new OpenFile(FolderFileState.Unreadable, null, 0);
        }
    }

    // The file behind a path, with its length where it may be read or is too long to be.
    private (FolderFileState State, FileInfo? File) Find(string path, long mostBytes)
    {
        ArgumentNullException.ThrowIfNull(path);
        try
        {
            if (Real(Path.Combine(_root, path)) is not { } real)
                return (FolderFileState.Missing, null);
            if (!IsInside(real))
                return (FolderFileState.Outside, null);
            var file = new FileInfo(real);
            if (!file.Exists)
                return (FolderFileState.Missing, null);
            return (file.Length > mostBytes ? FolderFileState.TooLong : FolderFileState.Read, file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return (FolderFileState.Unreadable, null);
        }
    }

    private bool IsInside(string real) =>
        real.StartsWith(Path.EndsInDirectorySeparator(_root) ? _root : _root + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    // The path with every link on the way replaced; null when a part does not exist or links run in a circle.
    private static string? Real(string path)
    {
        var links = 0;
        var pending = new Stack<string>(path.Split(Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar).Reverse());
        var root = Path.GetPathRoot(path)!;
        for (var i = root.Split(Path.DirectorySeparatorChar, StringSplitOptions.None).Length - 1; i > 0 && pending.Count > 0; i--)
            pending.Pop();
        var real = root;
        while (pending.TryPop(out var part))
        {
            if (part is "" or ".")
                continue;
            if (part == "..")
            {
                real = Path.GetDirectoryName(real) ?? root;
                continue;
            }

            var next = Path.Combine(real, part);
            FileSystemInfo entry = Directory.Exists(next) ? new DirectoryInfo(next) : new FileInfo(next);
            if (entry.LinkTarget is not { } target)
            {
                if (!entry.Exists)
                    return null;
                real = next;
                continue;
            }

            if (++links > MostLinks)
                return null;
            if (Path.IsPathRooted(target))
                real = Path.GetPathRoot(target)!;
            foreach (var step in target.Split(Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar).Reverse())
                pending.Push(step);
        }

        return real;
    }
}
