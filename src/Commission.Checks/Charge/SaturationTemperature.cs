using Commission.Measurement.Uncertainty;

namespace Commission.Checks.Charge;

/// <summary>A saturation temperature at a corrected pressure, or why there is none.</summary>
internal sealed record SaturationTemperature
{
    private SaturationTemperature()
    {
    }

    /// <summary>The temperature after every correction of the pressure, K; null when the state does not exist.</summary>
    public Uncertain? Value { get; private init; }

    /// <summary>The temperature at the pressure after its zero alone, K; not a number when that state does not exist.</summary>
    public double AfterZero { get; private init; } = double.NaN;

    /// <summary>dT/dp along the curve, K/Pa.</summary>
    public double Slope { get; private init; }

    /// <summary>Why there is none, as a sentence; null when there is one.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>A temperature.</summary>
    /// <param name="value">After every correction, K.</param>
    /// <param name="afterZero">After the zero alone, K.</param>
    /// <param name="slope">dT/dp, K/Pa.</param>
    public static SaturationTemperature Of(Uncertain value, double afterZero, double slope) => new() { Value = value, AfterZero = afterZero, Slope = slope };

    /// <summary>The middle between dew and bubble point at one pressure: the condensing or evaporating temperature of a blend with glide.</summary>
    /// <param name="dew">The dew point.</param>
    /// <param name="bubble">The bubble point.</param>
    public static SaturationTemperature Middle(SaturationTemperature dew, SaturationTemperature bubble) => (dew.Value, bubble.Value) switch
    {
        ({ } d, { } b) => Of((d + b) / 2, (dew.AfterZero + bubble.AfterZero) / 2, (dew.Slope + bubble.Slope) / 2),
        (null, _) => dew,
        _ => bubble,
    };

    /// <summary>None.</summary>
    /// <param name="why">Why, as a sentence.</param>
    public static SaturationTemperature None(string why) => new() { WhyNot = why };
}
