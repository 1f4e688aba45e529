namespace Commission.Checks.Tables;

/// <summary>
/// Charge limits by concentration in a space, ASHRAE 15 and 15.2 (from memory). The refrigerant's limits (LFL, RCL) are the caller's:
/// this program ships no list of RCL. SI doubles: volumes in m³, concentrations in kg/m³, masses in kg.
/// </summary>
internal static class ConcentrationCharge
{
    /// <summary>The flammable limit, as a trace prints it.</summary>
    public const string DispersalFormula = "EDVC = V·LFL·0.5·F_occ";

    /// <summary>The non-flammable limit, as a trace prints it.</summary>
    public const string ConcentrationFormula = "m = V·RCL·F_occ";

    /// <summary>Where the formulas come from.</summary>
    public const string Source = "ASHRAE 15 and 15.2";

    /// <summary>How sure the formulas are.</summary>
    public const string Mark = "from memory";

    private const double ConcentrationFactor = 0.5;

    /// <summary>Factor for who is in the space: institutional occupancy halves the limit.</summary>
    /// <param name="isInstitutional">Whether people there cannot leave by themselves.</param>
    /// <returns>1 or 0.5.</returns>
    public static double OccupancyFactor(bool isInstitutional) => isInstitutional ? 0.5 : 1.0;

    /// <summary>Effective dispersal volume charge of a flammable refrigerant.</summary>
    /// <param name="effectiveVolume">Effective dispersal volume, m³.</param>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="isInstitutional">Whether people there cannot leave by themselves.</param>
    /// <returns>Mass, kg.</returns>
    public static double EffectiveDispersal(double effectiveVolume, double lowerFlammabilityLimit, bool isInstitutional) =>
        effectiveVolume * lowerFlammabilityLimit * ConcentrationFactor * OccupancyFactor(isInstitutional);

    /// <summary>Charge that a refrigerant concentration limit allows.</summary>
    /// <param name="volume">Volume of the smallest occupied space, m³.</param>
    /// <param name="concentrationLimit">RCL, kg/m³, from the standard or the maker.</param>
    /// <param name="isInstitutional">Whether people there cannot leave by themselves.</param>
    /// <returns>Mass, kg.</returns>
    public static double ByConcentrationLimit(double volume, double concentrationLimit, bool isInstitutional) =>
        volume * concentrationLimit * OccupancyFactor(isInstitutional);
}
