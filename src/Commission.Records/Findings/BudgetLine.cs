using System.Globalization;

namespace Commission.Records.Findings;

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
    public string ShareText => SharePercent >= 9.95
        ? string.Create(CultureInfo.InvariantCulture, $"{SharePercent:0} %")
        : string.Create(CultureInfo.InvariantCulture, $"{SharePercent:0.0} %");
}
