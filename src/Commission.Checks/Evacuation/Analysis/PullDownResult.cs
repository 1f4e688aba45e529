using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>A logged pull-down against the expected one.</summary>
/// <param name="Limit">What set the pace.</param>
/// <param name="Bands">The pull in steps of half a decade, from the first numbered row down to the target or the lowest reading.</param>
/// <param name="MeasuredTime">Over all bands, s.</param>
/// <param name="ExpectedTime">Over all bands, s.</param>
/// <param name="Lowest">Lowest pressure of the pull, Pa; null without numbered rows.</param>
/// <param name="TimeAboveExpected">Time lost in the bands that took more than 2.5 times the expected time, s.</param>
/// <param name="TimeAtBoilingWater">Part of it in the range where water boils, s, where that range is slower than the rest; null without a saturation pressure.</param>
/// <param name="AtEnd">Speed at the system at the end of the last band, and where the pressure is spent; null without bands.</param>
/// <param name="Expected">The expected curve for a figure, on the clock of the log, s and Pa; at most 200 points.</param>
public sealed record PullDownResult(
    PullDownLimit Limit,
    ImmutableArray<PullDownBand> Bands,
    double MeasuredTime,
    double ExpectedTime,
    double? Lowest,
    double TimeAboveExpected,
    double? TimeAtBoilingWater,
    EffectiveSpeed? AtEnd,
    ImmutableArray<(double Time, double Pressure)> Expected);
