using System.Globalization;
using Commission.Measurement.Quantities;

namespace Commission.Checks.Tables;

/// <summary>
/// Target temperature split, return dry bulb minus supply dry bulb, at right airflow: California Residential Appendix RA3.2,
/// table RA3.2-3 (from memory). Return dry bulb 70 to 84 °F, return wet bulb 50 to 76 °F.
/// </summary>
internal static class CaliforniaSplitTable
{
    private static readonly Lazy<WholeDegreeGrid> Grid = new(() => WholeDegreeGrid.Load("california-temperature-split.csv"));

    /// <summary>The document, as the record cites it.</summary>
    public const string Source = "California Residential Appendix RA3.2, table RA3.2-3";

    /// <summary>How sure the figures are.</summary>
    public const string Mark = "from memory";

    /// <summary>The printed grid.</summary>
    internal static WholeDegreeGrid Printed => Grid.Value;

    /// <summary>The target split, interpolated between whole degrees.</summary>
    /// <param name="returnDryBulb">Dry bulb of the return air.</param>
    /// <param name="returnWetBulb">Wet bulb of the return air.</param>
    /// <returns>The target; or, at a dash or off the table, why there is none.</returns>
    public static TableTarget At(Temperature returnDryBulb, Temperature returnWetBulb)
    {
        var grid = Grid.Value;
        var reading = grid.Read(returnDryBulb.Fahrenheit, returnWetBulb.Fahrenheit);
        return reading.Where switch
        {
            WholeDegreeGrid.Place.OnTable => TableTarget.Of(reading),
            WholeDegreeGrid.Place.Dash => TableTarget.None(
                "The table has a dash here: the return air is drier than it covers. Measure the airflow instead."),
            WholeDegreeGrid.Place.BelowRows => TableTarget.None(Outside("Return air", returnDryBulb, "below", grid.FirstRow, "Warm the room, or measure the airflow instead.")),
            WholeDegreeGrid.Place.AboveRows => TableTarget.None(Outside("Return air", returnDryBulb, "above", grid.LastRow, "Let the system bring the room down, or measure the airflow instead.")),
            WholeDegreeGrid.Place.BelowColumns => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "below", grid.FirstColumn, "Measure the airflow instead.")),
            _ => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "above", grid.LastColumn, "Let the system bring the room down, or measure the airflow instead.")),
        };
    }

    private static string Outside(string what, Temperature found, string side, int edge, string advice) => string.Create(
        CultureInfo.InvariantCulture, $"{what} at {found.Fahrenheit:0.0} °F is {side} the table, which ends at {edge} °F. {advice}");
}
