namespace Commission.Measurement.Uncertainty;

/// <summary>One line of an uncertainty budget.</summary>
/// <param name="Cause">The root cause.</param>
/// <param name="Contribution">Signed standard contribution to the result, sensitivity times standard uncertainty, in the unit of the result.</param>
/// <param name="Share">Part of the variance of the result, 0 to 1.</param>
public sealed record BudgetLine(RootCause Cause, double Contribution, double Share)
{
    /// <summary>Change of the result for each unit of the cause.</summary>
    public double Sensitivity => Contribution / Cause.StandardUncertainty;
}
