using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>A quantity as it was written.</summary>
/// <param name="Si">SI value; for a pressure counted from <see cref="Reference"/>.</param>
/// <param name="Unit">Unit used; of a compound the largest, of a bare number the field's default.</param>
/// <param name="Decimals">Decimals written, of a compound those of the last part; zero for a fraction.</param>
/// <param name="ResolutionSi">One step of the last digit written, as an SI difference; nothing for a fraction.</param>
/// <param name="Canonical">The canonical spelling, with the digits as written.</param>
/// <param name="Uncertainty">The uncertainty written after it, if any.</param>
public sealed record ParsedQuantity(double Si, Unit Unit, int Decimals, double? ResolutionSi, string Canonical, StatedUncertainty? Uncertainty)
{
    /// <summary>What a pressure is counted from; nothing for anything else.</summary>
    public PressureReference? Reference => Unit.Reference;

    /// <summary>The pressure with its reference. Only for a pressure, a vacuum level or a barometer reading.</summary>
    /// <exception cref="InvalidOperationException">The quantity is not a stated pressure.</exception>
    public StatedPressure ToStatedPressure() => new(Si, Reference ?? throw new InvalidOperationException($"{Canonical} is not a stated pressure."));

    /// <summary>As a quantity of a given kind.</summary>
    /// <typeparam name="T">The quantity; its dimension is the one that was parsed for.</typeparam>
    public T As<T>()
        where T : struct, IQuantity<T> => T.FromSi(Si);
}
