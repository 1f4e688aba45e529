namespace Commission.Jobs;

/// <summary>A file that was read for a job.</summary>
/// <param name="Name">The job file's own name, or the path as the job writes it.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Content">Its bytes.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hexadecimal.</param>
public sealed record JobFile(string Name, JobFileRole Role, ReadOnlyMemory<byte> Content, string Sha256);
