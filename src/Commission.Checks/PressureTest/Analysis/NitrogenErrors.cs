namespace Commission.Checks.PressureTest.Analysis;

/// <summary>What makes the two ends of a nitrogen hold doubtful. Half-widths are bounds, taken as rectangular.</summary>
public sealed record NitrogenErrors
{
    /// <summary>Step of the gauge, Pa; each end is rounded on its own.</summary>
    public required double Resolution { get; init; }

    /// <summary>Repeatability of the gauge from one reading to the next, half-width, Pa. Common practice, no source: 0.1 % of full scale.</summary>
    public required double Repeatability { get; init; }

    /// <summary>Gauge's zero, half-width, Pa. With one gauge at both ends it is one error and nearly cancels.</summary>
    public double Zero { get; init; }

    /// <summary>Gauge's gain, half-width, relative. With one gauge at both ends it is one error and nearly cancels.</summary>
    public double Gain { get; init; }

    /// <summary>True when the same gauge read both ends.</summary>
    public bool SameGauge { get; init; } = true;

    /// <summary>Air pressure at the start, half-width, Pa: one error at both ends.</summary>
    public double Atmosphere { get; init; }

    /// <summary>Change of the air pressure over the hold that nobody read, half-width, Pa.</summary>
    public required double AtmosphereChange { get; init; }

    /// <summary>Mean gas temperature less the clamp's at each end, half-width, K; null for max(0.5 K, 0.3·|T₂ − T₁|), the default
    /// (common practice, no source). Smaller only with three clamps or more.</summary>
    public double? GasMinusClamp { get; init; }

    /// <summary>Gain of the thermometer over the hold's change of temperature and its own drift, half-width at each end, K.</summary>
    public double Thermometer { get; init; }
}
