using System.Security.Cryptography;
using System.Text.Json.Nodes;
using Commission.Records.Json;

namespace Commission.Records.Integrity;

/// <summary>The digest of a record: SHA-256 over its canonical JSON (RFC 8785) without the digest itself.</summary>
public static class RecordDigest
{
    /// <summary>Computes the digest.</summary>
    /// <param name="record">The record; its own digest is left out.</param>
    /// <returns>64 lower-case hexadecimal digits.</returns>
    public static string Compute(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Compute((JsonObject)JsonNode.Parse(RecordJson.Write(record))!);
    }

    /// <summary>Computes the digest of a record read as JSON, so that members of a later version count too.</summary>
    /// <param name="record">The record; its member <c>digest</c> is left out and the object is not changed.</param>
    /// <returns>64 lower-case hexadecimal digits.</returns>
    public static string Compute(JsonObject record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Convert.ToHexStringLower(SHA256.HashData(CanonicalJson.WriteWithout(record, "digest")));
    }

    /// <summary>Returns the record with its digest filled in.</summary>
    /// <param name="record">The finished record.</param>
    /// <returns>The same record, sealed.</returns>
    public static CommissioningRecord Seal(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record with { Digest = Compute(record) };
    }
}
