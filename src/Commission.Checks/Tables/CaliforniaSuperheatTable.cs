using System.Globalization;
using Commission.Measurement.Quantities;

namespace Commission.Checks.Tables;

/// <summary>
/// Target superheat of a system with a fixed orifice or a capillary: California Residential Appendix RA3.2, table RA3.2-2 (from memory).
/// Outdoor dry bulb 55 to 115 °F, return wet bulb 50 to 76 °F.
/// </summary>
internal static class CaliforniaSuperheatTable
{
    private static readonly Lazy<WholeDegreeGrid> Grid = new(() => WholeDegreeGrid.Load("california-target-superheat.csv"));

    /// <summary>The document, as the record cites it.</summary>
    public const string Source = "California Residential Appendix RA3.2, table RA3.2-2";

    /// <summary>How sure the figures are.</summary>
    public const string Mark = "from memory";

    /// <summary>The printed grid.</summary>
    internal static WholeDegreeGrid Printed => Grid.Value;

    /// <summary>The target superheat, interpolated between whole degrees.</summary>
    /// <param name="outdoorDryBulb">Air entering the condenser.</param>
    /// <param name="returnWetBulb">Wet bulb of the return air.</param>
    /// <returns>The target; or, at a dash or off the table, why there is none.</returns>
    public static TableTarget At(Temperature outdoorDryBulb, Temperature returnWetBulb)
    {
        var grid = Grid.Value;
        var reading = grid.Read(outdoorDryBulb.Fahrenheit, returnWetBulb.Fahrenheit);
        return reading.Where switch
        {
            WholeDegreeGrid.Place.OnTable => TableTarget.Of(reading),
            WholeDegreeGrid.Place.Dash => TableTarget.None(
                "The table has a dash here: the target superheat would be below 5 °F, too little load for a valid test. Warm the room, come back on another day, or weigh the charge in."),
            WholeDegreeGrid.Place.BelowRows => TableTarget.None(Outside("Outdoor air", outdoorDryBulb, "below", grid.FirstRow, "Weigh the charge in, or come back in warmer weather.")),
            WholeDegreeGrid.Place.AboveRows => TableTarget.None(Outside("Outdoor air", outdoorDryBulb, "above", grid.LastRow, "Come back when it is cooler, or weigh the charge in.")),
            WholeDegreeGrid.Place.BelowColumns => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "below", grid.FirstColumn, "Warm the room, or weigh the charge in.")),
            _ => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "above", grid.LastColumn, "Let the system bring the room down, then read again.")),
        };
    }

    private static string Outside(string what, Temperature found, string side, int edge, string advice) => string.Create(
        CultureInfo.InvariantCulture, $"{what} at {found.Fahrenheit:0.0} °F is {side} the table, which ends at {edge} °F. {advice}");
}
