namespace Commission.Jobs;

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
