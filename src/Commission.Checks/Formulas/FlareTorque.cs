using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>
/// Flare nuts by tube size: torque, wrench, finished flare, and the turn after the knee. Generic installation manuals (published);
/// the maker's own figure comes first.
/// </summary>
internal static class FlareTorque
{
    /// <summary>Where the figures come from.</summary>
    public static Message Source => FormulasMessages.FlareTorqueSource;

    // Tube sizes are at least 3 mm apart; a metric size is rounded to a hundredth.
    private const double Match = 0.1e-3;

    private const double Millimetre = 1e-3;

    private const double PoundForceInch = ConversionFactors.PoundForce * ConversionFactors.Inch;

    private static readonly Lazy<IReadOnlyList<FlareNut>> Rows = new(Build);

    /// <summary>All sizes, smallest first.</summary>
    public static IReadOnlyList<FlareNut> Nuts => Rows.Value;

    /// <summary>The nut of a tube size.</summary>
    /// <param name="outsideDiameter">Outside diameter of the tube.</param>
    /// <returns>The row; null when the size has none.</returns>
    public static FlareNut? For(Length outsideDiameter)
    {
        foreach (var nut in Nuts)
        {
            if (Math.Abs(nut.Outside - outsideDiameter.Si) <= Match)
                return nut;
        }

        return null;
    }

    private static List<FlareNut> Build() =>
    [
        Nut(6.35, 17, (8.7, 9.1), (60, 90), new((14, 18), (120, 160), (16, 18), (14.2, 17.2))),
        Nut(9.525, 22, (12.8, 13.2), (60, 90), new((34, 42), (300, 360), (30, 42), (32.7, 39.9))),
        Nut(12.7, 26, (16.2, 16.6), (30, 60), new((49, 61), (430, 540), (50, 62), (49.5, 60.3))),
        Nut(15.875, 29, (19.3, 19.7), (30, 60), new((69, 82), null, null, (61.8, 75.4))),
        Nut(19.05, 36, null, (20, 35), new((100, 120), null, null, (97.2, 118.6))),
    ];

    // As the manuals print them: N·m, and lbf·in for the second.
    private sealed record Torques((double Least, double Most) A, (double Least, double Most)? Inches, (double Least, double Most)? B, (double Least, double Most) Jis);

    private static FlareNut Nut(
        double outside,
        double wrench,
        (double Least, double Most)? flare,
        (double Least, double Most) angle,
        Torques printed)
    {
        var torque = new SortedDictionary<FlareTorqueSet, (double Least, double Most)>
        {
            [FlareTorqueSet.ManualA] = printed.A,
            [FlareTorqueSet.JisB8607] = printed.Jis,
        };
        if (printed.Inches is { } inches)
            torque[FlareTorqueSet.ManualAInches] = (inches.Least * PoundForceInch, inches.Most * PoundForceInch);
        if (printed.B is { } setB)
            torque[FlareTorqueSet.ManualB] = setB;
        return new FlareNut(
            outside * Millimetre,
            wrench * Millimetre,
            flare is { } f ? (f.Least * Millimetre, f.Most * Millimetre) : null,
            angle)
        { Torque = torque };
    }
}

/// <summary>One tube size of the flare table; lengths in m, torques in N·m, angles in degrees.</summary>
/// <param name="Outside">Outside diameter of the tube, m.</param>
/// <param name="Wrench">Width across flats of the nut for R-410A and R-32, m.</param>
/// <param name="Flare">Outside diameter of the finished flare for R-410A and R-32, m; null where no figure was found.</param>
/// <param name="Angle">Turn after the knee when there is no torque wrench, degrees.</param>
internal sealed record FlareNut(double Outside, double Wrench, (double Least, double Most)? Flare, (double Least, double Most) Angle)
{
    /// <summary>Torque by set, N·m; null where the set ends before this size.</summary>
    public required IReadOnlyDictionary<FlareTorqueSet, (double Least, double Most)> Torque { get; init; }

    /// <summary>How sure a torque of this size is.</summary>
    /// <returns>The mark the record prints.</returns>
    public string MarkOf(FlareTorqueSet set) => set == FlareTorqueSet.ManualA && Outside > 0.019 ? "common practice" : "published";
}

/// <summary>Which published set of flare-nut torques.</summary>
internal enum FlareTorqueSet
{
    /// <summary>Set A of generic installation manuals for R-410A and R-32.</summary>
    ManualA,

    /// <summary>Set A as the same manuals print it in lbf·in, rounded on its own; ends at 1/2 in.</summary>
    ManualAInches,

    /// <summary>Set B of generic installation manuals; ends at 1/2 in.</summary>
    ManualB,

    /// <summary>The set of JIS B 8607: a centre value ± 10 %.</summary>
    JisB8607,
}
