namespace Commission.Jobs.Files;

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
