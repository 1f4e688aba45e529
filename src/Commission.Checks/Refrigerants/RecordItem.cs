using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Something a regulation wants in the record.</summary>
/// <param name="What">What it is, in the words of the trade.</param>
/// <param name="Uses">Where the job says it; empty when it does not.</param>
internal sealed record RecordItem(string What, params ReadingUse?[] Uses)
{
    /// <summary>Whether the job says it.</summary>
    public bool IsWritten => Uses.Any(u => u is not null);
}
