using System.Globalization;

namespace Commission.Records;

/// <summary>An input file as it was read.</summary>
/// <param name="Name">Name relative to the job's folder.</param>
/// <param name="Bytes">Length in bytes.</param>
/// <param name="Sha256">SHA-256 in lower-case hexadecimal.</param>
public sealed record InputFile(string Name, long Bytes, string Sha256)
{
    /// <summary>The length as printed, for example <c>12,345</c>.</summary>
    public string SizeText => Bytes.ToString("#,0", CultureInfo.InvariantCulture);
}
