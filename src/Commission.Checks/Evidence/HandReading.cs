using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Evidence;

/// <summary>A number that somebody read off an instrument and typed.</summary>
/// <param name="Series">What it is without its time: <c>vapor line</c>. Readings of one series follow each other in time.</param>
/// <param name="Name">What it is, with its time.</param>
/// <param name="Reading">Which reading, to find its instrument.</param>
/// <param name="With">Instruments the phase names.</param>
/// <param name="At">Where it is written.</param>
/// <param name="Text">How it is written.</param>
/// <param name="Si">The number in SI.</param>
/// <param name="Step">The smallest step the number shows, SI; null for a fraction or a compound.</param>
internal sealed record HandReading(
    string Series, string Name, ReadingName Reading, ImmutableArray<Given<string>> With, SourceLocation At, string Text, double Si, double? Step)
{
    /// <summary>The reading as a finding names it.</summary>
    /// <param name="instrument">The instrument; null when the job names none.</param>
    public ReadingUse Use(string? instrument) => new(Name, Text, At, instrument);
}
