using Commission.Records.Findings;

namespace Commission.Acceptance.Tests;

/// <summary>A number of a job file.</summary>
/// <param name="Path">The keys that lead to it.</param>
/// <param name="Line">Line of the value, from 1.</param>
/// <param name="Column">Column of the value, from 1.</param>
/// <param name="Start">Where the digits begin in the text.</param>
/// <param name="Length">How many characters the digits take.</param>
/// <param name="Instrument">The instrument it describes; null for what was read and for the plate.</param>
internal sealed record PropertyTestsNumber(string Path, int Line, int Column, int Start, int Length, string? Instrument)
{
    /// <summary>Whether a finding names it: as a reading, or by naming the instrument it describes.</summary>
    public bool IsNamedBy(Finding finding) =>
        finding.Readings.Any(r => r.At.Line == Line && r.At.Column == Column)
        || (Instrument is not null && (finding.Instruments.Contains(Instrument) || finding.Readings.Any(r => r.Instrument == Instrument)));
}
