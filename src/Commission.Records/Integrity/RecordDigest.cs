using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Commission.Records.Json;

namespace Commission.Records.Integrity;

/// <summary>A finished record with the bytes that stand for it.</summary>
/// <param name="Record">The record, its digest filled in.</param>
/// <param name="Json">Its canonical JSON: the file, and what a template sees.</param>
public sealed record SealedRecord(CommissioningRecord Record, ReadOnlyMemory<byte> Json);

/// <summary>
/// The digest of a record: SHA-256 over its canonical JSON (RFC 8785) without the digest itself. Of a file as written it
/// is enough to cut the member <c>"digest":"…",</c> out and to hash what is left.
/// </summary>
public static class RecordDigest
{
    private static readonly string Unsealed = new('0', 2 * SHA256.HashSizeInBytes);

    /// <summary>Writes a finished record and fills its digest in.</summary>
    /// <param name="record">The record; a digest it may have is left out.</param>
    public static SealedRecord Seal(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var json = RecordJson.Write(record with { Digest = Unsealed });
        var (member, text) = Find(json);
        var digest = Compute(json, member);
        Encoding.ASCII.GetBytes(digest, json.AsSpan(text));
        return new SealedRecord(record with { Digest = digest }, json);
    }

    /// <summary>Computes the digest of a record.</summary>
    /// <param name="canonical">Its canonical JSON.</param>
    /// <returns>64 lower-case hexadecimal digits.</returns>
    public static string Compute(ReadOnlySpan<byte> canonical) => Compute(canonical, Find(canonical).Member);

    private static string Compute(ReadOnlySpan<byte> canonical, Range without)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(canonical[..without.Start]);
        hash.AppendData(canonical[without.End..]);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    // The record's own member and its comma; members of that name further down do not count.
    private static (Range Member, Range Text) Find(ReadOnlySpan<byte> canonical)
    {
        var reader = new Utf8JsonReader(canonical);
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var start = (int)reader.TokenStartIndex;
            var found = reader.ValueTextEquals("digest"u8);
            reader.Read();
            if (!found)
            {
                reader.Skip();
                continue;
            }

            var end = (int)reader.BytesConsumed;
            var text = ((int)reader.TokenStartIndex + 1)..(end - 1);
            return canonical[end] == ',' ? (start..(end + 1), text) : ((start - 1)..end, text);
        }

        throw new FormatException("The record has no digest.");
    }
}
