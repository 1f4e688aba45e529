using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Circuit;

/// <summary>The compression ratio that the conditions make likely at full load.</summary>
internal static class LikelyRatio
{
    // An air-cooled condenser runs some 11 K over the air; without an outdoor reading it condenses near 43 °C. Comfort cooling boils near 7 °C, a cold room 7 K
    // under its air (common practice, no source).
    private const double OverAir = 11;
    private const double UsualCondensing = 43 + Zero;
    private const double ComfortBoiling = 7.2 + Zero;
    private const double UnderRoom = 7;
    private const double Zero = 273.15;

    /// <summary>The ratio for a row in cooling.</summary>
    /// <returns>A ratio; null where nothing is likely: another mode, a circuit charged by weight alone, a head pressure that is held, no equation of state.</returns>
    public static double? Of(CheckContext context, ChargeRow row)
    {
        var charge = context.Get<ChargeAnalysis>();
        if (row.Mode != OperatingMode.Cooling || charge.ByWeightOnly is not null || context.Job.Equipment.HeadPressureControl is { Value: not HeadPressureControl.None } || context.Get<CircuitRefrigerant>().Fluid is not { } fluid)
            return null;
        var boiling = charge.IsRefrigeration ? (context.Job.Equipment.BoxTemperature?.Value.Si ?? row.BoxTemperature?.Value.Value) - UnderRoom : ComfortBoiling;
        var condensing = row.OutdoorDryBulb is { } air ? air.Value.Value + OverAir : UsualCondensing;
        return boiling is { } at && fluid.BubbleAtTemperature(condensing) is { Ok: true, Value.Pressure: var high } && fluid.DewAtTemperature(at) is { Ok: true, Value.Pressure: var low }
            ? high / low
            : null;
    }
}

/// <summary>The share of its rated load current that a compressor of comfort cooling is likely to draw at full load.</summary>
/// <param name="Share">The share.</param>
/// <param name="Outdoor">The outdoor air it was taken for.</param>
internal sealed record LikelyCurrent(double Share, CorrectedReading Outdoor)
{
    // Three quarters at 33 °C outdoors, and a hundredth more a kelvin (common practice, no source).
    private const double AtReference = 0.75;
    private const double PerKelvin = 0.011;
    private const double Reference = 33 + 273.15;
    private const double FarBelow = 0.87;

    /// <summary>Below this share the current is far below what is likely.</summary>
    public double Least => FarBelow * Share;

    /// <summary>The share at an outdoor temperature; the reference where none was read.</summary>
    /// <param name="outdoorKelvin">Outdoor air, K; null when it was not read.</param>
    public static double At(double? outdoorKelvin) => AtReference + (PerKelvin * ((outdoorKelvin ?? Reference) - Reference));

    /// <summary>For the last settled reading in cooling of a comfort system with a fixed-speed compressor.</summary>
    /// <returns>The share; null where nothing is likely.</returns>
    public static LikelyCurrent? Of(CheckContext context) =>
        context.Get<ChargeAnalysis>() is { IsRefrigeration: false, ByWeightOnly: null } charge
        && charge.Judged(OperatingMode.Cooling, r => r.HasCircuitReading && r.OutdoorDryBulb is not null) is { OutdoorDryBulb: { } outdoor } row
        && RunningCondition.Of(context, row).Block is null
            ? new LikelyCurrent(At(outdoor.Value.Value), outdoor)
            : null;
}
