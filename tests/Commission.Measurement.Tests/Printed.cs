using System.Globalization;

namespace Commission.Measurement.Tests;

/// <summary>Compares with a printed number: half a unit of its last digit, so that the tolerance cannot be chosen.</summary>
internal static class Printed
{
    /// <param name="printed">The number as printed, with its trailing zeros; a space may group digits.</param>
    /// <param name="actual">What was computed.</param>
    /// <param name="units">How many units of the last digit are allowed, one half unless the paper itself rounded on the way.</param>
    public static void Agrees(string printed, double actual, double units = 0.5)
    {
        var text = printed.Replace(" ", "", StringComparison.Ordinal);
        var expected = double.Parse(text, CultureInfo.InvariantCulture);
        var mantissa = text.Split('e', 'E')[0];
        var exponent = text.Length > mantissa.Length ? int.Parse(text[(mantissa.Length + 1)..], CultureInfo.InvariantCulture) : 0;
        var point = mantissa.IndexOf('.', StringComparison.Ordinal);
        var last = Math.Pow(10, exponent - (point < 0 ? 0 : mantissa.Length - point - 1));

        // A tolerance as large as the number would let zero pass.
        Assert.True(expected == 0 || units * last < Math.Abs(expected), $"{printed} has too few digits to check anything.");
        Assert.True(Math.Abs(actual - expected) <= (units * last) + (1e-12 * Math.Abs(expected)), string.Create(CultureInfo.InvariantCulture, $"printed {printed}, computed {actual:R}"));
    }
}
