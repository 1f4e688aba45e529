using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>
/// United States leak-repair rules: whether a circuit falls under one, the leak rate that triggers repair, and the annualised leak rate.
/// 40 CFR 82.157 and 84.106 (published); the annualising formula of 82.152 is from memory.
/// </summary>
internal static class LeakRepair
{
    /// <summary>Days of the year that a longer span counts as.</summary>
    public const int DaysInYear = 365;

    /// <summary>The leak rate, as a trace prints it.</summary>
    public static Message RateFormula => FormulasMessages.LeakRate;

    /// <summary>Where the leak-rate formula comes from.</summary>
    public static Message RateSource => Cited.FromMemory("40 CFR 82.152, annualising method");

    /// <summary>The rule a circuit falls under.</summary>
    /// <param name="fullChargeKilograms">Full charge, kg.</param>
    /// <param name="isOzoneDepleting">Whether the refrigerant, or a component, is a class I or II substance.</param>
    /// <param name="warmingPotential">GWP over 100 years as the rule counts it (AR4).</param>
    /// <param name="date">Day of the work.</param>
    /// <param name="isResidentialOrLightCommercialComfort">Whether it is of the residential and light-commercial air-conditioning and heat-pump subsector.</param>
    /// <returns>The rule.</returns>
    public static LeakRepairRule RuleFor(
        double fullChargeKilograms, bool isOzoneDepleting, double warmingPotential, DateOnly date, bool isResidentialOrLightCommercialComfort)
    {
        if (isOzoneDepleting)
            return fullChargeKilograms >= 50 * ConversionFactors.Pound ? LeakRepairRule.Section82157 : LeakRepairRule.None;
        return date >= new DateOnly(2026, 1, 1) && !isResidentialOrLightCommercialComfort && warmingPotential > 53 && fullChargeKilograms >= 15 * ConversionFactors.Pound
            ? LeakRepairRule.Section84106
            : LeakRepairRule.None;
    }

    /// <summary>Annualised leak rate: what was added over the full charge, scaled to a year; a span longer than a year counts as one.</summary>
    /// <param name="addedKilograms">Refrigerant added, kg.</param>
    /// <param name="fullChargeKilograms">Full charge, kg.</param>
    /// <param name="daysSinceLastAddition">Days since refrigerant was last added, at least 1.</param>
    /// <returns>A ratio for a year.</returns>
    public static double AnnualisedRate(double addedKilograms, double fullChargeKilograms, double daysSinceLastAddition) =>
        addedKilograms / fullChargeKilograms * DaysInYear / Math.Min(daysSinceLastAddition, DaysInYear);
}

/// <summary>Which United States leak-repair rule a circuit falls under.</summary>
internal enum LeakRepairRule
{
    None,

    /// <summary>40 CFR 82.157: ozone-depleting refrigerant, full charge of 50 lb or more.</summary>
    Section82157,

    /// <summary>40 CFR 84.106: substitute with GWP above 53, full charge of 15 lb or more, from 1 January 2026.</summary>
    Section84106,
}
