using Commission.Jobs.Files;

namespace Commission.Jobs;

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
/// <param name="Content">Its bytes.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hexadecimal.</param>
public sealed record JobFile(string Name, JobFileRole Role, ReadOnlyMemory<byte> Content, string Sha256);

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
