using System.Diagnostics.CodeAnalysis;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

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
            WholeDegreeGrid.Place.Dash => TableTarget.None(FormulasMessages.SplitDash, FormulasMessages.SplitMeasureNext),
            WholeDegreeGrid.Place.BelowRows => TableTarget.Outside(FormulasMessages.TableEndsWhich.ReturnBelow, returnDryBulb, grid.FirstRow, FormulasMessages.SplitWarmNext),
            WholeDegreeGrid.Place.AboveRows => TableTarget.Outside(FormulasMessages.TableEndsWhich.ReturnAbove, returnDryBulb, grid.LastRow, FormulasMessages.SplitCoolNext),
            WholeDegreeGrid.Place.BelowColumns => TableTarget.Outside(FormulasMessages.TableEndsWhich.WetBulbBelow, returnWetBulb, grid.FirstColumn, FormulasMessages.SplitMeasureNext),
            _ => TableTarget.Outside(FormulasMessages.TableEndsWhich.WetBulbAbove, returnWetBulb, grid.LastColumn, FormulasMessages.SplitCoolNext),
        };
    }
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
    public static Message DashNext => FormulasMessages.SuperheatDashNext;

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
            WholeDegreeGrid.Place.Dash => TableTarget.None(FormulasMessages.SuperheatDash, DashNext),
            WholeDegreeGrid.Place.BelowRows => TableTarget.Outside(FormulasMessages.TableEndsWhich.OutdoorBelow, outdoorDryBulb, grid.FirstRow, FormulasMessages.SuperheatColdNext),
            WholeDegreeGrid.Place.AboveRows => TableTarget.Outside(FormulasMessages.TableEndsWhich.OutdoorAbove, outdoorDryBulb, grid.LastRow, FormulasMessages.SuperheatHotNext),
            WholeDegreeGrid.Place.BelowColumns => TableTarget.Outside(FormulasMessages.TableEndsWhich.WetBulbBelow, returnWetBulb, grid.FirstColumn, FormulasMessages.SuperheatDryNext),
            _ => TableTarget.Outside(FormulasMessages.TableEndsWhich.WetBulbAbove, returnWetBulb, grid.LastColumn, FormulasMessages.SuperheatHumidNext),
        };
    }
}

/// <summary>
/// The field formula for target superheat with a fixed orifice, SH = (3·WB − 80 − ODB)/2 in °F. Information only: near the dry edge it
/// calls valid what the table refuses, and above 105 °F outdoors it is up to 6 °F low. It never sets a verdict.
/// </summary>
internal static class SuperheatFormula
{
    /// <summary>The formula, as a trace prints it.</summary>
    public static Message Formula => FormulasMessages.Superheat;

    /// <summary>Where it comes from.</summary>
    public static Message Source => FormulasMessages.SuperheatSource;

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
    public Message? Why { get; private init; }

    /// <summary>What to do instead; null when there is a target.</summary>
    public Message? Todo { get; private init; }

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
    public static TableTarget None(Message why, Message todo) => new() { Why = why, Todo = todo };

    /// <summary>No target, because a temperature lies beside the table.</summary>
    /// <param name="which">Which temperature, and on which side.</param>
    /// <param name="found">The temperature.</param>
    /// <param name="edge">Where the table ends, °F.</param>
    /// <param name="todo">What to do instead.</param>
    /// <returns>An answer without a value; temperatures in the unit of the printed table.</returns>
    public static TableTarget Outside(FormulasMessages.TableEndsWhich which, Temperature found, int edge, Message todo)
    {
        var unit = UnitSystem.Us[DisplayKind.Temperature].Unit;
        return None(FormulasMessages.TableEnds(which, QuantityWriter.Of(found.Si, unit, 1), QuantityWriter.Of(unit.ToSi(edge), unit, 0)), todo);
    }
}
