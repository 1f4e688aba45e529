namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Chance of a molecule to pass a short tube (Clausing 1932): molecular conductance = area·c̄/4 times this.</summary>
public static class ClausingFactor
{
    /// <summary>
    /// Berman, J. Appl. Phys. 36 (1965) 3356, in closed form (from memory); within 0.1 % of the tables up to L/r of 20, and 8r/(3L) for
    /// long tubes, where the closed form loses its digits.
    /// </summary>
    /// <param name="length">Length of the tube, m, ≥ 0.</param>
    /// <param name="diameter">Its bore, m, above 0.</param>
    public static double Of(double length, double diameter)
    {
        var l = 2 * length / diameter;
        if (l <= 0)
            return 1;

        // Beyond this the difference of large terms has no digits left; the long-tube limit is then closer.
        if (l > 2000)
            return 8 / (3 * l);
        var root = Math.Sqrt(l * l + 4);
        var first = 1 + l * l / 4 - l / 4 * root;

        // The second term goes by l³/24, and its denominator cancels to nothing.
        if (l < 0.02)
            return first;
        var upper = (8 - l * l) * root + l * l * l - 16;
        var lower = 72 * l * root - 288 * Math.Log(l + root) + 288 * Math.Log(2);
        return first - upper * upper / lower;
    }
}
