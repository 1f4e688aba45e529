using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Pumping speed of a vacuum pump over its inlet pressure.</summary>
public sealed class PumpCurve
{
    private readonly ImmutableArray<(double Pressure, double Speed)> points;
    private readonly double ultimate;

    private PumpCurve(ImmutableArray<(double Pressure, double Speed)> points, double ultimate)
    {
        this.points = points;
        this.ultimate = ultimate;
    }

    /// <summary>Lowest pressure of the pump alone, Pa; 0 when it is not stated.</summary>
    public double Ultimate => ultimate;

    /// <summary>The rated speed, falling to nothing at the pump's own lowest pressure: S·(1 − p_u/p).</summary>
    /// <param name="speed">Rated speed, m³/s, above 0.</param>
    /// <param name="ultimate">Lowest pressure of the pump alone, Pa; 0 for a constant speed.</param>
    public static PumpCurve Rated(double speed, double ultimate = 0) => new([(1, speed)], ultimate);

    /// <summary>A printed curve; between its points by straight lines over the logarithm of the pressure, beyond them level.</summary>
    /// <param name="points">Inlet pressure (Pa, above 0) and speed (m³/s), at least one, in any order.</param>
    /// <exception cref="ArgumentException">No point.</exception>
    public static PumpCurve From(IEnumerable<(double Pressure, double Speed)> points)
    {
        var sorted = points.OrderBy(p => p.Pressure).ToImmutableArray();
        if (sorted.IsEmpty)
            throw new ArgumentException("A pump curve needs at least one point.", nameof(points));
        return new PumpCurve(sorted, 0);
    }

    /// <summary>Speed at an inlet pressure, m³/s, not below 0.</summary>
    /// <param name="pressure">Pa, above 0.</param>
    public double SpeedAt(double pressure)
    {
        var speed = Tabulated(pressure);
        return Math.Max(speed * (1 - ultimate / pressure), 0);
    }

    private double Tabulated(double pressure)
    {
        if (pressure <= points[0].Pressure)
            return points[0].Speed;
        for (var i = 1; i < points.Length; i++)
        {
            var (p, s) = points[i];
            if (pressure > p)
                continue;
            var (q, r) = points[i - 1];
            return r + (s - r) * Math.Log(pressure / q) / Math.Log(p / q);
        }

        return points[^1].Speed;
    }
}
