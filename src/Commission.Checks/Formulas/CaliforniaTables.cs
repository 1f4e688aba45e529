using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Commission.Measurement.Quantities;

namespace Commission.Checks.Formulas;

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
                "The table has a dash here: the return air is drier than it covers", "Measure the airflow instead."),
            WholeDegreeGrid.Place.BelowRows => TableTarget.None(Outside("Return air", returnDryBulb, "below", grid.FirstRow), "Warm the room, or measure the airflow instead."),
            WholeDegreeGrid.Place.AboveRows => TableTarget.None(Outside("Return air", returnDryBulb, "above", grid.LastRow), "Let the system bring the room down, or measure the airflow instead."),
            WholeDegreeGrid.Place.BelowColumns => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "below", grid.FirstColumn), "Measure the airflow instead."),
            _ => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "above", grid.LastColumn), "Let the system bring the room down, or measure the airflow instead."),
        };
    }

    private static string Outside(string what, Temperature found, string side, int edge) => string.Create(
        CultureInfo.InvariantCulture, $"{what} at {found.Fahrenheit:0.0} °F is {side} the table, which ends at {edge} °F");
}

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

    /// <summary>What to do where the load is too small for a valid test.</summary>
    public const string DashNext = "Either read again when it is cooler outdoors or the return air is more humid, or recover the charge and weigh in the factory charge with the allowance for the lines.";

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
                "The table of target superheat has a dash here: at this load the superheat asked for is below 5 °F, too little to judge a charge by", DashNext),
            WholeDegreeGrid.Place.BelowRows => TableTarget.None(Outside("Outdoor air", outdoorDryBulb, "below", grid.FirstRow), "Weigh the charge in, or come back in warmer weather."),
            WholeDegreeGrid.Place.AboveRows => TableTarget.None(Outside("Outdoor air", outdoorDryBulb, "above", grid.LastRow), "Come back when it is cooler, or weigh the charge in."),
            WholeDegreeGrid.Place.BelowColumns => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "below", grid.FirstColumn), "Warm the room, or weigh the charge in."),
            _ => TableTarget.None(Outside("Return wet bulb", returnWetBulb, "above", grid.LastColumn), "Let the system bring the room down, then read again."),
        };
    }

    private static string Outside(string what, Temperature found, string side, int edge) => string.Create(
        CultureInfo.InvariantCulture, $"{what} at {found.Fahrenheit:0.0} °F is {side} the table, which ends at {edge} °F");
}

/// <summary>
/// The field formula for target superheat with a fixed orifice, SH = (3·WB − 80 − ODB)/2 in °F. Information only: near the dry edge it
/// calls valid what the table refuses, and above 105 °F outdoors it is up to 6 °F low. It never sets a verdict.
/// </summary>
internal static class SuperheatFormula
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "SH = (3·WB − 80 − ODB)/2, in °F";

    /// <summary>Where it comes from.</summary>
    public const string Source = "field formula, common practice, no source; information only";

    /// <summary>The formula's superheat.</summary>
    /// <param name="outdoorDryBulb">Air entering the condenser.</param>
    /// <param name="returnWetBulb">Wet bulb of the return air.</param>
    /// <returns>Superheat; may be negative, where it means nothing.</returns>
    public static TemperatureDifference At(Temperature outdoorDryBulb, Temperature returnWetBulb) =>
        TemperatureDifference.FromFahrenheitDegrees(((3 * returnWetBulb.Fahrenheit) - 80 - outdoorDryBulb.Fahrenheit) / 2);
}

/// <summary>What a two-temperature table says: a target with its slopes, or why it says nothing.</summary>
internal sealed record TableTarget
{
    private TableTarget()
    {
    }

    /// <summary>Whether the table gives a target here.</summary>
    [MemberNotNullWhen(false, nameof(Why), nameof(Todo))]
    public bool HasValue => Why is null;

    /// <summary>The target; meaningless without one.</summary>
    public TemperatureDifference Value { get; private init; }

    /// <summary>Change of the target with the dry-bulb temperature of the rows, K per K.</summary>
    public double PerDryBulb { get; private init; }

    /// <summary>Change of the target with the return wet bulb of the columns, K per K.</summary>
    public double PerWetBulb { get; private init; }

    /// <summary>Half of the last printed digit: a rectangular bound on the target that the table's own rounding leaves.</summary>
    public TemperatureDifference Rounding { get; private init; }

    /// <summary>Why there is no target, without a full stop; null when there is one.</summary>
    public string? Why { get; private init; }

    /// <summary>What to do instead; null when there is a target.</summary>
    public string? Todo { get; private init; }

    /// <summary>A target.</summary>
    /// <param name="reading">What the grid said, °F.</param>
    /// <returns>The target with its slopes.</returns>
    public static TableTarget Of(WholeDegreeGrid.Reading reading) => new()
    {
        Value = TemperatureDifference.FromFahrenheitDegrees(reading.Value),
        PerDryBulb = reading.AlongRows,
        PerWetBulb = reading.AlongColumns,
        Rounding = TemperatureDifference.FromFahrenheitDegrees(0.05),
    };

    /// <summary>No target.</summary>
    /// <param name="why">Why, without a full stop.</param>
    /// <param name="todo">What to do instead.</param>
    /// <returns>An answer without a value.</returns>
    public static TableTarget None(string why, string todo) => new() { Why = why, Todo = todo };
}
