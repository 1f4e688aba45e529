using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks.Findings;

/// <summary>
/// A number that equals its limit in every digit anybody wrote, and differs from it in the last bit of a double only: 75.0 °F less 53.0 °F is
/// 22 °F, but not when both were turned into kelvin first.
/// </summary>
internal static class LimitEquality
{
    private const double SameNumber = 1e-9;

    /// <summary>The number, moved onto a bound from which it differs by rounding alone.</summary>
    /// <param name="y">The number.</param>
    /// <param name="limit">The limit.</param>
    public static Uncertain On(this Uncertain y, LimitStatement limit)
    {
        foreach (var bound in new[] { limit.LowerSi, limit.UpperSi })
        {
            if (bound is { } at && at != y.Value && Math.Abs(at - y.Value) <= SameNumber * Math.Max(Math.Abs(at), Math.Abs(y.Value)))
                return y + (at - y.Value);
        }

        return y;
    }
}
