namespace Commission.Measurement.Decisions;

/// <summary>A verdict and what it rests on.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Rule">The rule it was made by.</param>
/// <param name="GuardBand">w: zero for simple acceptance, U for guarded.</param>
/// <param name="Acceptance">Where the result had to lie for a plain pass; nothing when U leaves no such place.</param>
/// <param name="ProbabilityOfConformity">Probability that the true value is within tolerance, from the scaled and shifted t of the result.</param>
/// <param name="MaximumFalseAccept">Largest probability of being out of tolerance that a plain pass can have (the specific risk at the acceptance limit, flat prior); nothing when no pass is possible.</param>
/// <param name="Adequacy">How fine the measurement is against the limit.</param>
public sealed record Decision(
    Verdict Verdict,
    DecisionRule Rule,
    double GuardBand,
    Tolerance? Acceptance,
    double ProbabilityOfConformity,
    double? MaximumFalseAccept,
    Adequacy Adequacy);
