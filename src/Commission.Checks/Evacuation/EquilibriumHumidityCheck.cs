using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.VacuumAnalysis;
using Commission.Fluids;
using Commission.Fluids.Water;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>The pressure at the end of the hold against the vapour pressure of water at the coldest part: what water it excludes, and where ice could still hide.</summary>
internal sealed class EquilibriumHumidityCheck : ICheck
{
    private const double LastPart = 1.0 / 3;
    private const double AtRest = 0.05;
    private const double LeastStepsOfRise = 2;

    // What a kelvin makes of the vapor pressure of water near room temperature: the coldest part is known no better (common practice, no source).
    private const double ShareOfDegree = 0.065;

    public string Id => "evacuation.humidity";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var given = run.Temperatures.Last;
        var sensor = run.Gauge.Instrument?.Described.Sensor;
        var finding = run.Name(context.Finding(this)).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingIsolatedAt, evacuation.IsolatedAt)
            .Use(evacuation.ColdestPartAtEnd is null ? VacuumHoldMessages.ReadingColdest : VacuumHoldMessages.ReadingColdestAtEnd, given).Use(VacuumHoldMessages.ReadingSensor, sensor, run.Gauge.Id);
        foreach (var level in evacuation.Levels)
            finding.Use(VacuumHoldMessages.ReadingIsolated(new(level.At.Text)), level.Isolated);
        if (run.Obstacle is { } block)
        {
            yield return finding.NotEvaluated(block.Why, block.Next);
            yield break;
        }

        if (run.Parts is not { Hold: { PressureAtEnd: { } pressure } hold } || !(pressure > 0))
        {
            yield return finding.NotEvaluated(VacuumHoldMessages.HumidityNoEnd, VacuumHoldMessages.HumidityNoEndNext);
            yield break;
        }

        run.Name(finding, hold.To, hold.To);
        if (given is null)
        {
            yield return finding.NotEvaluated(EvacuationMessages.ColdestNotRead, EvacuationMessages.ColdestNotReadNext, "evacuation: {coldest part: 66 °F}");
            yield break;
        }

        yield return WaterInVacuum.Read(pressure, given.Value.Si, run.Gauge.FeelsTheGas, Saturation, SaturationTemperature) is { } water
            ? Told(context, finding, water, pressure, given, run)
            : finding.NotEvaluated(VacuumHoldMessages.HumidityOutsideTables, VacuumHoldMessages.HumidityOutsideTablesNext);
    }

    private static Finding Told(CheckContext context, FindingBuilder finding, WaterInVacuum water, double pressure, Given<Temperature> coldest, EvacuationRun run)
    {
        var present = context.Present;
        var isIce = coldest.Value.Si < WaterSaturation.TripleTemperature;
        var shown = VacuumText.Level(present, pressure);
        var saturation = VacuumText.Level(present, water.Saturation);
        finding.Step("p_s", isIce ? VacuumHoldMessages.HumidityIcePressure : VacuumHoldMessages.HumidityWaterPressure, "p_sat(T)", coldest.Text, saturation, isIce ? "IAPWS R14-08" : "IAPWS-95, Wagner and Pruß 2002");
        finding.Step("φ", VacuumHoldMessages.HumidityStep, "p/p_sat", $"{shown}/{saturation}", Band(water.HumidityLow, water.HumidityHigh), run.Gauge.FeelsTheGas ? VacuumHoldMessages.HumidityHeatLoss : "");
        finding.Step("T_h", VacuumHoldMessages.HumidityHiddenStep, "T_sat(p)", shown, Colder(context, water), water.HiddenBelowAtMost < WaterSaturation.TripleTemperature ? "IAPWS R14-08" : "IAPWS-95, Wagner and Pruß 2002; IAPWS R14-08");
        var rising = IsAtRest(run, pressure) ? null : VacuumText.Value(present, pressure - Earlier(run)!.Value);
        var doubt = run.Rows.At(run.Parts.Hold!.To) is { Value: > 0 } read ? read.Expanded / read.Value : 0;
        var below = water.ExcludesFreeWater(doubt + ShareOfDegree);
        if (!below)
            finding.Next(EvacuationMessages.HumidityNext);
        else if (rising is not null)
            finding.Next(EvacuationMessages.HumidityRisingNext);
        var free = (isIce, below, water) switch
        {
            (_, true, _) when rising is not null => EvacuationMessages.HumidityRising(rising, new(run.Parts.Hold!.Length * LastPart)),
            (false, true, _) => EvacuationMessages.HumidityNoWater,
            (true, true, _) => EvacuationMessages.HumidityNoIce,
            (_, _, { HumidityLow: < 1 }) => EvacuationMessages.HumidityOpen,
            _ => EvacuationMessages.HumidityFree,
        };
        return finding.Information(
            EvacuationMessages.Humidity(
                VacuumText.Value(present, pressure), new(Band(water.HumidityLow, water.HumidityHigh)), isIce ? EvacuationMessages.HumidityWhat.Ice : EvacuationMessages.HumidityWhat.Water,
                new(coldest.Text), run.Evacuation.ColdestPartAtEnd is null ? EvacuationMessages.HumidityWhen.Once : EvacuationMessages.HumidityWhen.End, VacuumText.Value(present, water.Saturation), free, Hidden(water), new(Colder(context, water))),
            VacuumHoldMessages.HumidityKind);
    }

    private static EvacuationMessages.HumidityHides Hidden(WaterInVacuum water) =>
        water.HiddenBelowAtMost < WaterSaturation.TripleTemperature ? EvacuationMessages.HumidityHides.Ice
        : water.HiddenBelow >= WaterSaturation.TripleTemperature ? EvacuationMessages.HumidityHides.Water
        : EvacuationMessages.HumidityHides.Either;

    // A pressure that still rises is not that of an equilibrium, whatever its level (share and part: common practice, no source).
    private static bool IsAtRest(EvacuationRun run, double pressure) =>
        run.Hold?.Conclusion == HoldConclusion.Held || Earlier(run) is not { } earlier || pressure - earlier <= Math.Max(AtRest * pressure, LeastStepsOfRise * (run.Hold?.Resolution ?? 0));

    private static double? Earlier(EvacuationRun run) => run.Parts.Hold is { } hold ? run.Rows.Series.PressureAt(hold.To - (LastPart * hold.Length), run.Rows.LongestBridge) : null;

    private static string Band(double low, double high) => high - low < 0.05 * high ? Share(high) : $"{Share(low)} to {Share(high)}";

    private static string Share(double share)
    {
        var percent = 100 * share;
        return percent switch
        {
            < 1 => string.Create(CultureInfo.InvariantCulture, $"{percent:0.00} %"),
            < 10 => string.Create(CultureInfo.InvariantCulture, $"{percent:0.0} %"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{percent:0} %"),
        };
    }

    private static string Colder(CheckContext context, WaterInVacuum water) => water.HiddenBelowAtMost - water.HiddenBelow < 0.05
        ? context.Present.Text(water.HiddenBelowAtMost, DisplayKind.Temperature)
        : $"{context.Present.Number(water.HiddenBelow, DisplayKind.Temperature)} to {context.Present.Text(water.HiddenBelowAtMost, DisplayKind.Temperature)}";

    private static double? Saturation(double kelvin) => Value(WaterVapor.SaturationPressure(kelvin));

    private static double? SaturationTemperature(double pascals) => Value(WaterVapor.SaturationTemperature(pascals));

    private static double? Value(FluidResult<double> result) => result.Ok ? result.Value : null;
}
