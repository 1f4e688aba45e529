using Commission.Measurement.Quantities;

namespace Commission.Measurement.Uncertainty;

/// <summary>A quantity with its uncertainty.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="uncertain">Estimate in SI with its causes.</param>
public readonly struct Measured<T>(Uncertain uncertain)
    where T : struct, IQuantity<T>
{
    /// <summary>The estimate.</summary>
    public T Value => T.FromSi(Uncertain.Value);

    /// <summary>Estimate in SI with its causes. Of a default value: exactly zero.</summary>
    public Uncertain Uncertain => uncertain ?? Uncertain.Exact(0);

    /// <summary>A quantity without doubt.</summary>
    /// <param name="value">The quantity.</param>
    public static Measured<T> Exact(T value) => new(Uncertain.Exact(value.Si));
}
