namespace Commission.Records;

/// <summary>A photo that belongs to the job; the picture itself stays with the crew, its hash proves which it is.</summary>
/// <param name="File">Name relative to the job's folder.</param>
/// <param name="Shows">What it shows.</param>
/// <param name="Taken">When it was taken, as printed; empty when unknown.</param>
/// <param name="Sha256">SHA-256 in lower-case hexadecimal.</param>
public sealed record PhotoNote(string File, string Shows, string Taken, string Sha256);
