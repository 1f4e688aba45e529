using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Meaning;

/// <summary>Readings of the running system that cannot be.</summary>
internal static class ReadingRules
{
    // Two sensors in saturated air may differ by this much without anything being wrong.
    private const double SensorScatter = 0.3;

    // Far above any refrigerant circuit or nitrogen regulator in use, carbon dioxide included.
    private const double HighestPressure = 20e6;

    public static void Check(RuleContext context)
    {
        foreach (var reading in context.Job.Charging?.Readings ?? [])
            Check(context, reading, reading.Mode?.Value ?? context.Job.Charging?.Mode?.Value ?? OperatingMode.Cooling);
        foreach (var reading in context.Job.AsFound?.Readings ?? []) Check(context, reading, reading.Mode?.Value ?? OperatingMode.Cooling);
        NotTooHigh(context, context.Job.Charging?.StandingTest?.LiquidPressure);
        Share(context, context.Job.Charging?.ReceiverLevel);
    }

    /// <summary>A temperature outside what can be there, in °C.</summary>
    public static void Within(RuleContext context, Given<Temperature>? given, double lowest, double highest, string what)
    {
        if (given is null || (given.Value.Celsius >= lowest && given.Value.Celsius <= highest)) return;
        context.Complain(given, $"{given.Text} cannot be the temperature of {what}.", "", "Check the number and the unit.", "impossible");
    }

    public static void NotTooHigh(RuleContext context, Given<StatedPressure>? given)
    {
        if (given is null) return;
        if (given.Value.ToAbsolute(context.Atmosphere).Si < 0)
            context.Complain(given, $"{given.Text} is below a perfect vacuum at this site.", "", "Check the number and the unit.", "impossible");
        else if (given.Value.Pascals > HighestPressure)
            context.Complain(given, $"{given.Text} is more than any circuit holds.", "", "Check the number and the unit.", "impossible");
    }

    private static void Check(RuleContext context, Reading reading, OperatingMode mode)
    {
        WetBulb(context, reading.OutdoorWetBulb, reading.OutdoorDryBulb, "outdoor");
        WetBulb(context, reading.ReturnWetBulb, reading.ReturnDryBulb, "return");
        WetBulb(context, reading.SupplyWetBulb, reading.SupplyDryBulb, "supply");
        foreach (var pressure in new[] { reading.VaporPressure, reading.LiquidPressure, reading.TrueSuctionPressure, reading.DischargePressure }) NotTooHigh(context, pressure);
        Higher(context, reading.TrueSuctionPressure, "true suction pressure", reading.DischargePressure ?? (mode == OperatingMode.Cooling ? reading.LiquidPressure : reading.VaporPressure),
            reading.DischargePressure is not null ? "discharge pressure" : mode == OperatingMode.Cooling ? "liquid pressure" : "vapor pressure",
            "Check whether the readings are swapped; while the compressor runs its inlet is the lower.");
        if (mode == OperatingMode.Cooling)
        {
            Higher(context, reading.VaporPressure, "vapor pressure", reading.LiquidPressure, "liquid pressure",
                "Check whether the readings are swapped; in heating, write mode: heating.");
        }

        Within(context, reading.OutdoorDryBulb, -60, 65, "outdoor air");
        Within(context, reading.OutdoorWetBulb, -60, 45, "a wet bulb outdoors");
        Within(context, reading.ReturnDryBulb, -50, 60, "return air");
        Within(context, reading.ReturnWetBulb, -50, 45, "a wet bulb in return air");
        Within(context, reading.SupplyDryBulb, -60, 90, "supply air");
        Within(context, reading.SupplyWetBulb, -60, 60, "a wet bulb in supply air");
        Within(context, reading.BoxTemperature, -80, 60, "a cold room");
        foreach (var pipe in new[] { reading.VaporLine, reading.LiquidLine, reading.CompressorSuctionLine, reading.DischargeLine, reading.LiquidAfterDrier, reading.EvaporatorOutlet, reading.IndoorCoilOutlet, reading.Sump })
            Within(context, pipe, -120, 200, "a refrigerant line");
        foreach (var share in new[] { reading.OutdoorHumidity, reading.ReturnHumidity, reading.SupplyHumidity, reading.ReceiverLevel }) Share(context, share);
    }

    private static void WetBulb(RuleContext context, Given<Temperature>? wet, Given<Temperature>? dry, string where)
    {
        if (wet is null || dry is null || wet.Value.Si <= dry.Value.Si + SensorScatter) return;
        context.Complain(wet, $"The {where} wet bulb {wet.Text} is above the dry bulb {dry.Text}.", "A wet bulb is at most as warm as the dry bulb.", "Check whether they are swapped.", "impossible");
    }

    private static void Higher(RuleContext context, Given<StatedPressure>? low, string lowName, Given<StatedPressure>? high, string highName, string advice)
    {
        if (low is null || high is null || low.Value.ToAbsolute(context.Atmosphere).Si <= high.Value.ToAbsolute(context.Atmosphere).Si) return;
        context.Complain(low, $"The {lowName} {low.Text} is above the {highName} {high.Text}.", "", advice, "impossible");
    }

    private static void Share(RuleContext context, Given<Ratio>? given)
    {
        if (given is null || given.Value.Si is >= 0 and <= 1) return;
        context.Complain(given, $"{given.Text} is not a share of the whole.", "It lies between 0 and 100 %.", "Check the number.", "impossible");
    }
}
