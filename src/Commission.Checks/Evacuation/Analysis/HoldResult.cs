using System.Collections.Immutable;
using Commission.Measurement.Uncertainty;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What the analysis of a hold found. Pressures in Pa, times in s on the clock of the log, slopes in Pa/s.</summary>
public sealed record HoldResult
{
    /// <summary>What the hold shows.</summary>
    public required HoldConclusion Conclusion { get; init; }

    /// <summary>Why it does not tell; null unless <see cref="HoldConclusion.CannotTell"/>.</summary>
    public CannotTellReason? Reason { get; init; }

    /// <summary>The curve that the evidence prefers, whether or not a conclusion stands on it; null without rows.</summary>
    public HoldModel? Preferred { get; init; }

    /// <summary>The evidence for each of the four curves, in order of their number of parameters; empty without rows.</summary>
    public ImmutableArray<ModelEvidence> Evidence { get; init; } = [];

    /// <summary>Isolation, s.</summary>
    public required double Isolation { get; init; }

    /// <summary>From isolation to the last used row, s.</summary>
    public required double Length { get; init; }

    /// <summary>The steady part of the rise, Pa/s, with its 95 % interval including the gauge's gain; null when nothing could be fitted.
    /// It comes from the line, or from line and source together where a source is preferred, without forcing the sign.</summary>
    public Interval? Slope { get; init; }

    /// <summary>The same slope, Pa/s, with its causes (scatter with its degrees of freedom, gain, temperature) for what is computed from it;
    /// null with <see cref="Slope"/>.</summary>
    public Uncertain? SlopeWithCauses { get; init; }

    /// <summary>Plateau of the source, Pa, gain and zero included; null unless the preferred curve has a source and no line.</summary>
    public Interval? Plateau { get; init; }

    /// <summary>Time constant of the source, s; null unless the preferred curve has a source.</summary>
    public Interval? TimeConstant { get; init; }

    /// <summary>Rise due to the steady part from isolation to the last used row, Pa; null when nothing could be fitted.</summary>
    public double? LineRise { get; init; }

    /// <summary>Rise due to the source over the used rows, Pa; null unless the preferred curve has a source.</summary>
    public double? SourceRise { get; init; }

    /// <summary>Rise of the preferred curve over the used rows, Pa; null without a fit.</summary>
    public double? RiseSeen { get; init; }

    /// <summary>A rise over the hold counts only above this, Pa: the larger of 5 resolutions and 10 % of the allowed rise.</summary>
    public required double CountingRise { get; init; }

    /// <summary>Sources with a time constant up to this, s, are excluded by a steady rise (95 %); slower ones would look the same.
    /// Null unless the conclusion is <see cref="HoldConclusion.SteadyRise"/>.</summary>
    public double? SourcesExcludedUpTo { get; init; }

    /// <summary>Length of a hold that would tell, s; null when the conclusion stands, or when no hold of a day would.</summary>
    public double? TimeToTell { get; init; }

    /// <summary>Rows used and left out.</summary>
    public required HoldRows Rows { get; init; }

    /// <summary>Resolution used, Pa: stated, or the step the log really makes.</summary>
    public required double Resolution { get; init; }

    /// <summary>Lag-1 correlation ρ of the residuals; null without a fit.</summary>
    public double? Correlation { get; init; }

    /// <summary>Rows averaged into one block.</summary>
    public int BlockRows { get; init; }

    /// <summary>Length of a block, s.</summary>
    public double BlockSeconds { get; init; }

    /// <summary>Number of blocks n, the independent readings of the criterion.</summary>
    public int Blocks { get; init; }

    /// <summary>Fitted curves for figures: the flat curve, and each curve that has evidence; at most 200 points each.</summary>
    public ImmutableArray<HoldCurve> Curves { get; init; } = [];

    /// <summary>Block means and their distance from the preferred curve, at most 200 points.</summary>
    public ImmutableArray<HoldPoint> Points { get; init; } = [];
}
