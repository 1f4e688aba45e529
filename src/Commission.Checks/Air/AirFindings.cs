using Commission.Checks.Findings;
using Commission.Checks.Readings;

namespace Commission.Checks.Air;

/// <summary>What the checks of air, compressor and piping have in common when they put a finding together.</summary>
internal static class AirFindings
{
    /// <summary>Remarks that U holds the resolution alone where nobody states an accuracy. A pass stays a pass: which instrument was used is a question of its own.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="readings">The readings the number rests on.</param>
    public static FindingBuilder RemarkUnknown(this FindingBuilder finding, IEnumerable<CorrectedReading> readings)
    {
        var names = readings.Where(r => !r.AccuracyKnown).Select(r => r.Name).Distinct(StringComparer.Ordinal).ToArray();
        return names.Length == 0 ? finding : finding.Remark($"U holds the resolution alone: the accuracy of {string.Join(" and ", names)} is not written.");
    }

    /// <summary>Names readings with their corrections.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="readings">The readings.</param>
    public static FindingBuilder UseAll(this FindingBuilder finding, IEnumerable<CorrectedReading> readings)
    {
        foreach (var reading in readings)
            finding.Use(reading);
        return finding;
    }
}
