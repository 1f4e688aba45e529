using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;

namespace Commission.Jobs.Model;

/// <summary>A value as somebody gave it: it knows where it was written and how.</summary>
/// <typeparam name="T">The kind of value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Text">How the record prints it: canonical spelling of number and unit.</param>
public sealed record Given<T>(T Value, SourceLocation At, string Text)
{
    /// <summary>The uncertainty written behind the value; null when none was.</summary>
    public Stated? Stated { get; init; }

    /// <summary>
    /// The smallest step the written number shows, in SI: 0.1 °F of difference for <c>45.2 °F</c>.
    /// Null when the value is not a quantity, or was written as a fraction or a compound.
    /// </summary>
    public double? Step { get; init; }

    /// <summary>The number as it was written; null when the value is not one number.</summary>
    public WrittenNumber? Number { get; init; }
}

/// <summary>An uncertainty that was written behind a reading.</summary>
/// <param name="HalfWidthSi">What stands behind ±, in SI; for a temperature it is a difference.</param>
/// <param name="CoverageFactor">The coverage factor: 2 unless <c>(k=…)</c> says otherwise.</param>
public sealed record Stated(double HalfWidthSi, double CoverageFactor);

/// <summary>A number as it was written.</summary>
/// <param name="Si">In SI, a pressure counted from what its unit says.</param>
/// <param name="Unit">The unit, of a compound the largest, of a bare number the one that <c>units</c> gives it; the unit of a pure number is <c>1</c>.</param>
/// <param name="Decimals">Decimals written, of a compound those of its last part; zero for a fraction.</param>
public sealed record WrittenNumber(double Si, Unit Unit, int Decimals);

/// <summary>A range such as <c>208 to 230 V</c>; a single value is a range of no width.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Lower">The lower end as written.</param>
/// <param name="Upper">The upper end as written.</param>
public sealed record QuantityRange<T>(Given<T> Lower, Given<T> Upper)
{
    /// <summary>The lower end.</summary>
    public T Low => Lower.Value;

    /// <summary>The upper end.</summary>
    public T High => Upper.Value;
}

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
