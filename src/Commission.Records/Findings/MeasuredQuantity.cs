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
    /// <summary>Coverage factor as printed, with degrees of freedom where there are few: <c>k = 2.03, ν = 41</c>; null without a coverage factor.</summary>
    public string? CoverageText { get; init; }
}

/// <summary>A single quantity as it is kept and as it is printed. Pages print <see cref="Text"/> and compute nothing.</summary>
/// <param name="Si">Value in the coherent SI unit of its dimension (temperatures in kelvin, pressures absolute in pascal).</param>
/// <param name="Dimension">Name of the dimension, for example <c>temperature difference</c>.</param>
/// <param name="Unit">Symbol of the unit used for display, for example <c>°F</c>.</param>
/// <param name="Value">Value in <paramref name="Unit"/>, rounded as printed.</param>
/// <param name="Decimals">Digits after the decimal point as printed; 0 or more.</param>
/// <param name="Text">The printed form with its unit, for example <c>13.1 °F</c>.</param>
public sealed record DisplayQuantity(double Si, string Dimension, string Unit, double Value, int Decimals, string Text);

/// <summary>One line of an uncertainty budget (JCGM 100, clause 8 and example H.1).</summary>
/// <param name="Cause">The physical cause, for example <c>low gauge, gain</c>.</param>
/// <param name="Distribution">Assumed distribution, for example <c>rectangular</c>.</param>
/// <param name="StandardUncertainty">u of the cause with its unit, as printed.</param>
/// <param name="Sensitivity">Sensitivity coefficient with its unit, as printed.</param>
/// <param name="ContributionSi">Contribution to u of the result in SI; signed like the sensitivity.</param>
/// <param name="SharePercent">Share of the combined variance in per cent; 0 to 100 (more or less when causes are correlated).</param>
/// <param name="Source">Where the uncertainty of the cause comes from.</param>
public sealed record BudgetLine(
    string Cause,
    string Distribution,
    string StandardUncertainty,
    string Sensitivity,
    double ContributionSi,
    double SharePercent,
    string Source)
{
    /// <summary>The share as printed, for example <c>62 %</c> or <c>0.4 %</c>.</summary>
    public string ShareText { get; init; } = "";
}
