using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>A fitted curve for a figure, at most 200 points, with the 95 % band of its mean from the scatter alone
/// (a gain error moves readings and curve alike).</summary>
/// <param name="Model">The curve.</param>
/// <param name="Times">On the clock of the log, s.</param>
/// <param name="Pressures">Pa.</param>
/// <param name="Low">Lower edge of the band, Pa.</param>
/// <param name="High">Upper edge of the band, Pa.</param>
public sealed record HoldCurve(
    HoldModel Model,
    ImmutableArray<double> Times,
    ImmutableArray<double> Pressures,
    ImmutableArray<double> Low,
    ImmutableArray<double> High);
