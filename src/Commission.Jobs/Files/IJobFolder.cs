namespace Commission.Jobs.Files;

/// <summary>A folder from which a job's files are read, and nothing outside it.</summary>
public interface IJobFolder
{
    /// <summary>Reads a file of the folder.</summary>
    /// <param name="path">Path inside the folder, parts separated by <c>/</c>; never rooted, never with <c>..</c>.</param>
    /// <param name="mostBytes">A longer file is not read.</param>
    /// <returns>The bytes, or why there are none.</returns>
    FolderFile Read(string path, long mostBytes);
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
