namespace Commission.Checks.EvacuationAnalysis;

/// <summary>How well one curve explains a hold.</summary>
/// <param name="Model">The curve.</param>
/// <param name="Parameters">Number of parameters k, σ counted.</param>
/// <param name="RootMeanSquare">Root mean square of the residuals of the blocks, Pa, not below resolution/√12.</param>
/// <param name="Aicc">Akaike's criterion with the correction for few readings, n·ln σ² + 2k + 2k(k+1)/(n−k−1); null when n ≤ k + 1.</param>
/// <param name="Difference">AICc less the smallest of the four; null with <paramref name="Aicc"/>.</param>
public sealed record ModelEvidence(HoldModel Model, int Parameters, double RootMeanSquare, double? Aicc, double? Difference);
