using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Decisions;

/// <summary>Whether two routes to one quantity agree. Causes the routes share cancel in the difference, so that only what is independent counts.</summary>
/// <param name="Difference">First minus second, with what remains of the uncertainty.</param>
/// <param name="NormalizedError">E_n = |a − b| / U(a − b); without shared causes √(U_a² + U_b²) stands below (ISO 13528 and ISO/IEC 17043, from memory). Zero for equal exact values, infinite for different ones.</param>
public sealed record Agreement(Uncertain Difference, double NormalizedError)
{
    /// <summary>E_n is one or less.</summary>
    public bool Agrees => NormalizedError <= 1;

    /// <summary>Compares two routes.</summary>
    /// <param name="first">First result.</param>
    /// <param name="second">Second result.</param>
    public static Agreement Of(Uncertain first, Uncertain second)
    {
        var difference = first - second;
        var size = Math.Abs(difference.Value);
        return new Agreement(difference, size == 0 ? 0 : size / difference.Expanded);
    }
}
