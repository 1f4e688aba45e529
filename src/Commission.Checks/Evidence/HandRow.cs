using System.Collections.Immutable;
using Commission.Jobs.Model;

namespace Commission.Checks.Evidence;

/// <summary>Readings typed side by side at one time.</summary>
/// <param name="Name">When, in words.</param>
/// <param name="Line">Line of the job file.</param>
/// <param name="At">The time.</param>
/// <param name="Readings">The readings.</param>
internal sealed record HandRow(string Name, int Line, Given<JobTime> At, ImmutableArray<HandReading> Readings);
