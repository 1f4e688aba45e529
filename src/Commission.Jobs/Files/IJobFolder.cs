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
