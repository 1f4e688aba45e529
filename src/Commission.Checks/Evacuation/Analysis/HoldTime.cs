namespace Commission.Checks.EvacuationAnalysis;

/// <summary>How long a hold must last for a rise to show, from the volume and the gauge: the rise per leak goes by 1/V.</summary>
public static class HoldTime
{
    /// <summary>A rise counts from this many steps of the gauge on (our default, tried by simulation).</summary>
    public const double StepsThatCount = 5;

    /// <summary>Shortest hold, s, in which an inflow raises the pressure by five steps of the gauge.</summary>
    /// <param name="volume">V, m³.</param>
    /// <param name="resolution">Step of the gauge, Pa.</param>
    /// <param name="throughput">Inflow to be seen, Pa·m³/s, above 0.</param>
    /// <param name="skip">Time left out after isolation, s.</param>
    public static double ToSee(double volume, double resolution, double throughput, double skip = 60) =>
        skip + StepsThatCount * resolution * volume / throughput;

    /// <summary>Smallest inflow, Pa·m³/s, that a hold can show: five steps of the gauge over it.</summary>
    /// <param name="volume">V, m³.</param>
    /// <param name="resolution">Step of the gauge, Pa.</param>
    /// <param name="hold">Length of the hold, s, above <paramref name="skip"/>.</param>
    /// <param name="skip">Time left out after isolation, s.</param>
    public static double Smallest(double volume, double resolution, double hold, double skip = 60) =>
        hold > skip ? StepsThatCount * resolution * volume / (hold - skip) : double.PositiveInfinity;
}
