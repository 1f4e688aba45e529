using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.VacuumAnalysis.Simulation;

/// <summary>What is true in a simulated hold, and how it is measured. Pa, s.</summary>
internal sealed record HoldTruth
{
    public required HoldConclusion Kind { get; init; }

    public required double Length { get; init; }

    public required double Interval { get; init; }

    /// <summary>Pressure at isolation.</summary>
    public required double Level { get; init; }

    /// <summary>Steady part, Pa/s.</summary>
    public double Slope { get; init; }

    /// <summary>p∞ − p0 of the source.</summary>
    public double Step { get; init; }

    public double Tau { get; init; } = 1;

    /// <summary>Standard deviation and lag-1 correlation (from row to row) of the wander.</summary>
    public double Noise { get; init; }

    public double Correlation { get; init; }

    public double Resolution { get; init; }

    public double GainHalfWidth { get; init; }

    /// <summary>True pressure = reading·(1 + this): an accuracy "of reading".</summary>
    public double GainError { get; init; }

    /// <summary>Change of temperature over the hold, K.</summary>
    public double TemperatureChange { get; init; }

    public int Spikes { get; init; }

    public double DroppedShare { get; init; }

    public int OverRangeRows { get; init; }

    /// <summary>Step at isolation that evens out within seconds, Pa, as where the gauge sits at the pump.</summary>
    public double StepAtIsolation { get; init; }

    public const double DecayLimit = 133.322;

    public double AllowedRise => DecayLimit - Level;

    /// <summary>A rise counts above 5 resolutions and a tenth of the allowed rise (the rule of the product, restated here).</summary>
    public double Counting => Math.Max(5 * Resolution, 0.1 * AllowedRise);

    public double At(double t) => Level + Slope * t + Step * (1 - Math.Exp(-t / Tau));

    public GaugeCharacter Gauge => new(Resolution, GainHalfWidth, 0);

    public HoldOptions Options => new(AllowedRise);
}
