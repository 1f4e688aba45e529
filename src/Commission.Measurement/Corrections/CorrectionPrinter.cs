using Commission.Measurement.Units;

namespace Commission.Measurement.Corrections;

/// <summary>How the numbers of a correction are written in its steps.</summary>
/// <param name="Value">Prints an SI value of the reading.</param>
/// <param name="Difference">Prints an SI difference of two readings.</param>
public sealed record CorrectionPrinter(Func<double, string> Value, Func<double, string> Difference)
{
    /// <summary>Prints in two units, one decimal more for a difference.</summary>
    /// <param name="value">Unit of the reading.</param>
    /// <param name="difference">Unit of a difference.</param>
    /// <param name="decimals">Decimals of the reading.</param>
    public static CorrectionPrinter For(Unit value, Unit difference, int decimals) => new(
        si => QuantityFormat.Format(si, value, decimals),
        si => QuantityFormat.Format(si, difference, decimals + 1));
}
