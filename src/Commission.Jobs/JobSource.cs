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
