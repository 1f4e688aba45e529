using System.Globalization;

namespace Commission.Records.Findings;

/// <summary>A measured or derived quantity with its uncertainty in the words of the GUM (JCGM 100).</summary>
/// <param name="Value">The best estimate.</param>
/// <param name="StandardUncertaintySi">Combined standard uncertainty u in SI units of the difference of the dimension; null when none is stated.</param>
/// <param name="ExpandedSi">Expanded uncertainty U = k·u in the same unit; null when none is stated.</param>
/// <param name="CoverageFactor">k = t95.45(ν); null when none is stated.</param>
/// <param name="DegreesOfFreedom">Effective degrees of freedom ν (Welch–Satterthwaite, GUM G.4.1); null when unlimited or not stated.</param>
/// <param name="Text">Value and U in the same decimals, for example <c>13.1 ± 1.5 °F</c>.</param>
/// <param name="ExpandedText">U alone with its unit, for example <c>1.5 °F</c>; null when none is stated.</param>
public sealed record MeasuredQuantity(
    DisplayQuantity Value,
    double? StandardUncertaintySi,
    double? ExpandedSi,
    double? CoverageFactor,
    double? DegreesOfFreedom,
    string Text,
    string? ExpandedText)
{
    /// <summary>Coverage factor and degrees of freedom as printed, for example <c>k = 2.03, ν = 41</c>; null without a coverage factor.</summary>
    public string? CoverageText => CoverageFactor is not { } k
        ? null
        : DegreesOfFreedom is { } nu && double.IsFinite(nu) && nu < 1000
            ? string.Create(CultureInfo.InvariantCulture, $"k = {k:0.00}, ν = {Math.Floor(nu):0}")
            : string.Create(CultureInfo.InvariantCulture, $"k = {k:0.00}, ν > 1000");
}
