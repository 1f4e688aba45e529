namespace Commission.Checks.Tables;

/// <summary>Ratio of the absolute pressures at a compressor.</summary>
internal static class CompressionRatio
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "ratio = p_discharge / p_suction, both absolute";

    /// <summary>The ratio.</summary>
    /// <param name="dischargePascals">Discharge pressure, Pa absolute.</param>
    /// <param name="suctionPascals">Suction pressure, Pa absolute.</param>
    /// <returns>A ratio.</returns>
    public static double Of(double dischargePascals, double suctionPascals) => dischargePascals / suctionPascals;
}
