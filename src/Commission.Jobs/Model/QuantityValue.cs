using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A quantity whose kind follows from the unit that was written, such as the full scale of an instrument.</summary>
/// <param name="Si">The number in SI; of a gauge pressure as written, in Pa.</param>
/// <param name="Dimension">What it is a number of.</param>
/// <param name="Reference">What a pressure is counted from; absolute for everything else.</param>
/// <param name="Unit">The unit's canonical symbol.</param>
public readonly record struct QuantityValue(double Si, Dimension Dimension, PressureReference Reference, string Unit)
{
    /// <summary>The same as a stated pressure; only for pressures.</summary>
    /// <returns>The pressure.</returns>
    public StatedPressure ToStatedPressure() => new(Si, Reference);
}
