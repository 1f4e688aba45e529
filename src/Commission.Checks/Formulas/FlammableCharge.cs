using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>
/// Charge limits for flammable refrigerants in occupied rooms, IEC (UL) 60335-2-40 Annex GG (from memory; the printed tables GG of the
/// 2018 edition are reproduced). SI doubles: LFL in kg/m³, heights in m, areas in m², masses in kg.
/// </summary>
internal static class FlammableCharge
{
    /// <summary>The room limit, as a trace prints it.</summary>
    public static Message RoomFormula => FormulasMessages.RoomCharge;

    /// <summary>Where the formulas come from.</summary>
    public const string Source = "IEC/UL 60335-2-40, Annex GG";

    /// <summary>How sure the formulas are.</summary>
    public const string Mark = "from memory";

    /// <summary>Lowest release height the formulas may be used with, m.</summary>
    public const double LowestReleaseHeight = 0.6;

    private const double Coefficient = 2.5;
    private const double SafetyFactor = 0.75;

    /// <summary>Charge up to which no room limit applies: m1 = 6 m³·LFL for A2L from 2018, 4 m³·LFL otherwise.</summary>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="isA2L">Whether the refrigerant is of class A2L.</param>
    /// <param name="edition">Which edition.</param>
    /// <returns>Mass, kg.</returns>
    public static double WithoutRoomLimit(double lowerFlammabilityLimit, bool isA2L, ChargeLimitEdition edition) =>
        (Widened(isA2L, edition) ? 6 : 4) * lowerFlammabilityLimit;

    /// <summary>Largest charge without extra measures: m2 = 52 m³·LFL for A2L from 2018, 26 m³·LFL otherwise.</summary>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="isA2L">Whether the refrigerant is of class A2L.</param>
    /// <param name="edition">Which edition.</param>
    /// <returns>Mass, kg.</returns>
    public static double WithoutMeasures(double lowerFlammabilityLimit, bool isA2L, ChargeLimitEdition edition) =>
        (Widened(isA2L, edition) ? 52 : 26) * lowerFlammabilityLimit;

    /// <summary>Largest charge at all in the scope of the standard: m3 = 260 m³·LFL for A2L from 2018, 130 m³·LFL otherwise.</summary>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="isA2L">Whether the refrigerant is of class A2L.</param>
    /// <param name="edition">Which edition.</param>
    /// <returns>Mass, kg.</returns>
    public static double AtAll(double lowerFlammabilityLimit, bool isA2L, ChargeLimitEdition edition) =>
        (Widened(isA2L, edition) ? 260 : 130) * lowerFlammabilityLimit;

    /// <summary>Height from which refrigerant would escape, for a unit of this kind.</summary>
    /// <param name="mounting">How the unit is mounted.</param>
    /// <returns>Height, m.</returns>
    public static double ReleaseHeight(ReleaseMounting mounting) => mounting switch
    {
        ReleaseMounting.Floor => 0.6,
        ReleaseMounting.Window => 1.0,
        ReleaseMounting.Wall => 1.8,
        _ => 2.2,
    };

    /// <summary>Height from which refrigerant would escape: installed height plus the opening's height in the unit, at least 0.6 m.</summary>
    /// <param name="installedHeight">Underside of the unit above the floor, m.</param>
    /// <param name="openingHeight">Lowest opening above the underside of the unit, m.</param>
    /// <returns>Height, m.</returns>
    public static double ReleaseHeight(double installedHeight, double openingHeight) =>
        Math.Max(installedHeight + openingHeight, LowestReleaseHeight);

    /// <summary>Largest charge for a room.</summary>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="releaseHeight">Release height, m, at least 0.6.</param>
    /// <param name="floorArea">Floor area of the room, or of the rooms served together, m².</param>
    /// <param name="edition">Which edition.</param>
    /// <returns>Mass, kg.</returns>
    public static double LargestFor(double lowerFlammabilityLimit, double releaseHeight, double floorArea, ChargeLimitEdition edition)
    {
        var quadratic = Coefficient * Math.Pow(lowerFlammabilityLimit, 1.25) * releaseHeight * Math.Sqrt(floorArea);
        return edition == ChargeLimitEdition.Before2018
            ? quadratic
            : Math.Min(quadratic, SafetyFactor * lowerFlammabilityLimit * releaseHeight * floorArea);
    }

    /// <summary>Smallest floor area for a charge: the inverse of <see cref="LargestFor"/>.</summary>
    /// <param name="charge">Charge, kg.</param>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="releaseHeight">Release height, m, at least 0.6.</param>
    /// <param name="edition">Which edition.</param>
    /// <returns>Area, m².</returns>
    public static double SmallestArea(double charge, double lowerFlammabilityLimit, double releaseHeight, ChargeLimitEdition edition)
    {
        var root = charge / (Coefficient * Math.Pow(lowerFlammabilityLimit, 1.25) * releaseHeight);
        var quadratic = root * root;
        return edition == ChargeLimitEdition.Before2018
            ? quadratic
            : Math.Max(quadratic, charge / (SafetyFactor * lowerFlammabilityLimit * releaseHeight));
    }

    private static bool Widened(bool isA2L, ChargeLimitEdition edition) => isA2L && edition == ChargeLimitEdition.From2018;
}

/// <summary>
/// Charge limits of self-contained refrigerating appliances, IEC 60335-2-89:2019 (from memory). SI doubles: LFL in kg/m³, areas in m²,
/// masses in kg.
/// </summary>
internal static class ApplianceCharge
{
    /// <summary>The room limit, as a trace prints it.</summary>
    public static Message RoomFormula => FormulasMessages.ApplianceRoom;

    /// <summary>The largest charge of A3, as a trace prints it.</summary>
    public static Message LargestFormula => FormulasMessages.ApplianceCharge;

    /// <summary>Where the formulas come from.</summary>
    public const string Source = "IEC 60335-2-89:2019";

    /// <summary>How sure the formulas are.</summary>
    public const string Mark = "from memory";

    /// <summary>Charge up to which an appliance may stand anywhere, kg.</summary>
    public const double Anywhere = 0.150;

    private const double LargestSlowBurning = 1.2;
    private const double LargestVolume = 13;
    private const double ShareOfLimit = 0.25;
    private const double Height = 2.2;

    /// <summary>Largest charge of an appliance.</summary>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="isA3">Whether the refrigerant is of class A3.</param>
    /// <returns>Mass, kg.</returns>
    public static double Largest(double lowerFlammabilityLimit, bool isA3) => isA3 ? LargestVolume * lowerFlammabilityLimit : LargestSlowBurning;

    /// <summary>Largest charge above <see cref="Anywhere"/> for a room; how high the appliance stands does not count.</summary>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <param name="floorArea">Floor area, m².</param>
    /// <returns>Mass, kg.</returns>
    public static double LargestFor(double lowerFlammabilityLimit, double floorArea) => ShareOfLimit * lowerFlammabilityLimit * Height * floorArea;

    /// <summary>Smallest floor area for a charge: the inverse of <see cref="LargestFor"/>.</summary>
    /// <param name="charge">Charge, kg.</param>
    /// <param name="lowerFlammabilityLimit">LFL, kg/m³.</param>
    /// <returns>Area, m².</returns>
    public static double SmallestArea(double charge, double lowerFlammabilityLimit) => charge / (ShareOfLimit * lowerFlammabilityLimit * Height);
}

/// <summary>Which form of the charge limits of IEC (UL) 60335-2-40 applies.</summary>
internal enum ChargeLimitEdition
{
    /// <summary>Editions before 2018: m1, m2, m3 = 4, 26, 130 m³·LFL for every class, quadratic room limit.</summary>
    Before2018,

    /// <summary>2018 and later: 6, 52, 260 m³·LFL for A2L; the room limit is the lesser of the quadratic and the linear form.</summary>
    From2018,
}

/// <summary>How the indoor unit is mounted, when the height from which refrigerant would escape is not given.</summary>
internal enum ReleaseMounting
{
    /// <summary>Standing on the floor: 0.6 m.</summary>
    Floor,

    /// <summary>In a window: 1.0 m.</summary>
    Window,

    /// <summary>On a wall: 1.8 m.</summary>
    Wall,

    /// <summary>At the ceiling: 2.2 m.</summary>
    Ceiling,
}

/// <summary>
/// Charge limits by concentration in a space, ASHRAE 15 and 15.2 (from memory). The refrigerant's limits (LFL, RCL) are the caller's:
/// this program ships no list of RCL. SI doubles: volumes in m³, concentrations in kg/m³, masses in kg.
/// </summary>
internal static class ConcentrationCharge
{
    /// <summary>The flammable limit, as a trace prints it.</summary>
    public static Message DispersalFormula => FormulasMessages.Dispersal;

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
}
