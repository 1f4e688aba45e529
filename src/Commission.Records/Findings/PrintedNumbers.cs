using System.Globalization;

namespace Commission.Records.Findings;

/// <summary>Pure numbers of a record as they are printed, with a point for decimals; a phrase book puts the sign of the language.</summary>
public static class PrintedNumbers
{
    private const double ManyDegreesOfFreedom = 1000;

    /// <summary>A probability that is never rounded to 0 or 100 per cent; null for none.</summary>
    /// <param name="probability">The probability, 0 to 1.</param>
    public static string? Probability(double? probability) => probability switch
    {
        null => null,
        < 0.001 => "< 0.1 %",
        > 0.999 => "> 99.9 %",
        < 0.095 or > 0.905 => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:0.0} %"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:0} %"),
    };

    /// <summary>A ratio with two digits, for example <c>2.1</c>; null for none.</summary>
    /// <param name="ratio">The ratio, not negative.</param>
    public static string? Ratio(double? ratio) => ratio switch
    {
        null => null,
        >= 99.5 => "> 99",
        >= 9.95 => string.Create(CultureInfo.InvariantCulture, $"{ratio:0}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{ratio:0.0}"),
    };

    /// <summary>A coverage factor, with degrees of freedom where there are few: <c>k = 2.03, ν = 41</c>.</summary>
    /// <param name="factor">The coverage factor; null for none.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom; null when unlimited or not stated. Cut down to whole ones (GUM G.4.1).</param>
    public static string? Coverage(double? factor, double? degreesOfFreedom) => factor is not { } k
        ? null
        : degreesOfFreedom is { } nu && double.IsFinite(nu) && nu < ManyDegreesOfFreedom
            ? string.Create(CultureInfo.InvariantCulture, $"k = {k:0.00}, ν = {Math.Floor(nu):0}")
            : string.Create(CultureInfo.InvariantCulture, $"k = {k:0.00}");

    /// <summary>A share, for example <c>62 %</c> or <c>0.4 %</c>.</summary>
    /// <param name="percent">The share in per cent.</param>
    public static string Share(double percent) => percent >= 9.95
        ? string.Create(CultureInfo.InvariantCulture, $"{percent:0} %")
        : string.Create(CultureInfo.InvariantCulture, $"{percent:0.0} %");
}
