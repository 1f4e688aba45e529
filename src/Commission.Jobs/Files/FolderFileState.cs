namespace Commission.Jobs.Files;

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
