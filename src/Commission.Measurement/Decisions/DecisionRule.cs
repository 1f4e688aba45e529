namespace Commission.Measurement.Decisions;

/// <summary>How uncertainty enters a verdict.</summary>
public enum DecisionRule
{
    /// <summary>Simple acceptance, w = 0: pass or fail at the limit, the probability of conformity printed. For makers' and field tolerances that already allow for instruments.</summary>
    Simple,

    /// <summary>Guarded acceptance, w = U: pass, conditional pass, conditional fail, fail. For safety and legal maxima.</summary>
    Guarded,
}
