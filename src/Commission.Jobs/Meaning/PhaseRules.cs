using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Meaning;

/// <summary>Pressures and temperatures of the nitrogen test that cannot be.</summary>
internal static class PressureTestRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.PressureTest is not { } test)
            return;
        foreach (var stage in test.Stages.Append(test.Strength))
            AboveAtmosphere(context, stage?.Pressure);
        if (test.Tightness is not { } hold)
            return;
        if (hold.From is null != hold.To is null)
        {
            context.Problems.Add(hold.Origin, $"The hold has {(hold.From is null ? "an end and no start" : "a start and no end")}.", "", $"Write {(hold.From is null ? "from" : "to")}: with its time, pressure and temperature.", "missing-key");
        }
        else if (hold is { From: null, Series: null, Readings.Length: < 2 })
        {
            context.Problems.Add(hold.Origin, "The hold has no readings.", "", "Write from: and to:, or a series.", "missing-key");
        }

        foreach (var point in hold.Readings.Append(hold.From).Append(hold.To))
        {
            if (point is not null)
                AboveAtmosphere(context, point.Pressure);
        }
    }

    private static void AboveAtmosphere(RuleContext context, Given<StatedPressure>? pressure)
    {
        if (pressure is null)
            return;
        var gauge = pressure.Value.ToGauge(context.Atmosphere).Si;
        if (gauge <= 0)
            context.Complain(pressure, $"A pressure test at {pressure.Text} is not above the atmosphere.", "", "Check the number and the unit.", "impossible");
        else
            ReadingRules.NotBelowVacuum(context, pressure);
    }
}

/// <summary>Levels that are no vacuum, and events that miss what they need.</summary>
internal static class EvacuationRules
{
    public static void Check(RuleContext context)
    {
        foreach (var given in Levels(context.Job))
        {
            if (given is not null && given.Value.Si > context.Atmosphere.Si * 1.05)
                context.Complain(given, $"{given.Text} is above the atmosphere.", "A vacuum level is absolute pressure below it.", "Check the number and the unit.", "impossible");
        }

        if (context.Job.Evacuation is not { } evacuation)
            return;
        foreach (var happened in evacuation.Events)
        {
            if (happened.To is { } to && happened.What is { Value: not EvacuationEventKind.NitrogenBreak } what)
                context.Complain(to, $"\"to\" is the pressure of a nitrogen break, and this is \"{what.Text}\".", "", "Delete it, or write what: nitrogen break.", "impossible");
        }

        var isolated = evacuation.Events.Where(e => e.What?.Value == EvacuationEventKind.Isolated).ToArray();
        if (isolated.Length > 1 && evacuation.Events.All(e => e.What?.Value is not (EvacuationEventKind.PumpOn or EvacuationEventKind.NitrogenBreak or EvacuationEventKind.Opened)))
        {
            context.Complain(isolated[1].What, "The circuit is isolated twice, and the pump was not started again in between.", "", "Keep one, or write the event pump on between them.", "impossible");
        }
    }

    private static IEnumerable<Given<Pressure>?> Levels(Job job) =>
    [
        job.Limits?.DecayLimit?.Level,
        job.Limits?.Vacuum?.Target,
        job.Limits?.Vacuum?.Maximum,
        job.Evacuation?.Target,
        job.Evacuation?.DecayLimit?.Level,
        job.Evacuation?.RigCheck?.PumpAlone,
        job.Evacuation?.RigCheck?.BlankedOff,
        .. job.Evacuation?.Levels.Select(l => l.Pressure) ?? [],
    ];
}

/// <summary>Masses that do not add up, and the one thing a new installation must say.</summary>
internal static class ChargeRules
{
    public static void Check(RuleContext context)
    {
        var job = context.Job;
        if (job.Recovery?.Scale is { } recovered && recovered.After?.Value.Si < recovered.Before?.Value.Si)
            context.Complain(recovered.After, $"The recovery cylinder became lighter: {recovered.Before.Text} before, {recovered.After.Text} after.", "", "Check whether they are swapped.", "impossible");
        foreach (var cylinder in job.Cylinders)
        {
            if (cylinder is { Tare: { } tare, Before: { } gross } && gross.Value.Si < tare.Value.Si)
                context.Complain(gross, $"The cylinder weighs {gross.Text}, less than its tare {tare.Text}.", "", "Write gross masses: cylinder and refrigerant together.", "impossible");
        }

        if (job.Charging is not { } charging)
            return;
        foreach (var scale in charging.Scale)
        {
            if (scale.After?.Value.Si > scale.Before?.Value.Si)
                context.Complain(scale.After, $"The cylinder became heavier: {scale.Before.Text} before, {scale.After.Text} after.", "", "Check whether they are swapped; what was taken out stands under removed.", "impossible");
        }

        if (charging.Added is { } added && charging.Scale.Length > 0)
            context.Complain(added, "The mass added is written twice: as added and as scale readings.", "", "Keep the scale readings.", "duplicate-key");
        if (charging.UnitArrived is null && job.Identity?.Work is { Value: WorkKind.NewInstallation } && job.Equipment?.System is { Value: not (SystemKind.Packaged or SystemKind.AirToWaterHeatPump or SystemKind.Chiller) })
        {
            context.Problems.Add(charging.Origin, "The charging of a new installation does not say \"unit arrived\".", "The scale sees the whole charge or only what was added, depending on it.",
                "Write unit arrived: charged, nitrogen holding charge, recovered and evacuated, or unknown.", "missing-key");
        }

        foreach (var change in charging.Events)
        {
            if (change is { Added: null, Removed: null, Note: null })
                context.Problems.Add(change.Origin, "This event says nothing.", "", "Write added, removed or note.", "no-figure");
        }
    }
}

/// <summary>Readings of the running system that cannot be.</summary>
internal static class ReadingRules
{
    // Two sensors in saturated air may differ by this much without anything being wrong.
    private const double SensorScatter = 0.3;

    public static void Check(RuleContext context)
    {
        foreach (var reading in context.Job.Charging?.Readings ?? [])
            Check(context, reading, reading.Mode?.Value ?? context.Job.Charging?.Mode?.Value ?? OperatingMode.Cooling);
        foreach (var reading in context.Job.AsFound?.Readings ?? [])
            Check(context, reading, reading.Mode?.Value ?? OperatingMode.Cooling);
        NotBelowVacuum(context, context.Job.Charging?.StandingTest?.LiquidPressure);
    }

    public static void NotBelowVacuum(RuleContext context, Given<StatedPressure>? given)
    {
        if (given is not null && given.Value.ToAbsolute(context.Atmosphere).Si < 0)
            context.Complain(given, $"{given.Text} is below a perfect vacuum at this site.", "", "Check the number and the unit.", "impossible");
    }

    private static void Check(RuleContext context, Reading reading, OperatingMode mode)
    {
        WetBulb(context, reading.OutdoorWetBulb, reading.OutdoorDryBulb, "outdoor");
        WetBulb(context, reading.ReturnWetBulb, reading.ReturnDryBulb, "return");
        WetBulb(context, reading.SupplyWetBulb, reading.SupplyDryBulb, "supply");
        foreach (var pressure in new[] { reading.VaporPressure, reading.LiquidPressure, reading.TrueSuctionPressure, reading.DischargePressure })
            NotBelowVacuum(context, pressure);
        Higher(context, reading.TrueSuctionPressure, "true suction pressure", reading.DischargePressure ?? (mode == OperatingMode.Cooling ? reading.LiquidPressure : reading.VaporPressure),
            reading.DischargePressure is not null ? "discharge pressure" : mode == OperatingMode.Cooling ? "liquid pressure" : "vapor pressure",
            "Check whether the readings are swapped; while the compressor runs its inlet is the lower.");
        if (mode == OperatingMode.Cooling)
        {
            Higher(context, reading.VaporPressure, "vapor pressure", reading.LiquidPressure, "liquid pressure",
                "Check whether the readings are swapped; in heating, write mode: heating.");
        }
    }

    private static void WetBulb(RuleContext context, Given<Temperature>? wet, Given<Temperature>? dry, string where)
    {
        if (wet is null || dry is null || wet.Value.Si <= dry.Value.Si + SensorScatter)
            return;
        context.Complain(wet, $"The {where} wet bulb {wet.Text} is above the dry bulb {dry.Text}.", "A wet bulb is at most as warm as the dry bulb.", "Check whether they are swapped.", "impossible");
    }

    private static void Higher(RuleContext context, Given<StatedPressure>? low, string lowName, Given<StatedPressure>? high, string highName, string advice)
    {
        if (low is null || high is null || low.Value.ToAbsolute(context.Atmosphere).Si <= high.Value.ToAbsolute(context.Atmosphere).Si)
            return;
        context.Complain(low, $"The {lowName} {low.Text} is above the {highName} {high.Text}.", "", advice, "impossible");
    }
}

/// <summary>Fan tables rise, and an air flow comes with what its method needs.</summary>
internal static class AirRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Air is not { } air)
            return;
        for (var i = 1; i < (air.FanTable?.Points.Length ?? 0); i++)
        {
            var (last, point) = (air.FanTable!.Points[i - 1], air.FanTable.Points[i]);
            if (point.Static is { } now && last.Static is { } before && now.Value.Si <= before.Value.Si)
                context.Complain(now, $"{now.Text} does not come after {before.Text}.", "The static pressures of a fan table rise.", "Sort the points.", "chart");
        }

        if (air.Airflow is not { Method: { } method } flow)
            return;
        var (missing, key) = method.Value switch
        {
            AirflowMethod.HeatRise when flow.HeatRise is null => (true, "heat rise: with its input, return and supply temperature"),
            AirflowMethod.Traverse when flow.Traverse is null && flow.Value is null => (true, "traverse: with its area and velocities"),
            AirflowMethod.Hood when flow.Hood.Length == 0 && flow.Value is null => (true, "hood: with its readings"),
            AirflowMethod.FanTable when air.FanTable is null => (true, "fan table: under air, with its points"),
            AirflowMethod.PressureDrop or AirflowMethod.UnitDisplay when flow.Value is null => (true, "value: and the air flow"),
            _ => (false, ""),
        };
        if (missing)
            context.Complain(method, $"The air flow by \"{method.Text}\" has no readings.", "", $"Write {key}.", "missing-key");
        if (flow.HeatRise is { } heat && heat is { Input: null, Output: null } && (heat.Volts is null || heat.Amps is null))
            context.Problems.Add(heat.Origin, "The heat of the heat-rise test is not known.", "", "Write input, or volts and amps, or output.", "missing-key");
    }
}

/// <summary>Voltages and currents come one for a single phase, three for three phases.</summary>
internal static class ElectricalRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Electrical is not { } electrical)
            return;
        var phases = context.Job.Equipment?.Nameplate?.Phases?.Value;
        Count(context, electrical.LineToLine, "line to line", phases);
        Count(context, electrical.Compressor, "compressor", phases);
        if (electrical.VoltageDropAtStart is { Before: { } before, Lowest: { } lowest } && lowest.Value.Si > before.Value.Si)
            context.Complain(lowest, $"The lowest voltage at start, {lowest.Text}, is above the {before.Text} before it.", "", "Check whether they are swapped.", "impossible");
    }

    private static void Count<T>(RuleContext context, ImmutableArray<Given<T>> values, string key, int? phases)
    {
        if (values.Length is 0 or 1 or 3 && !(values.Length == 3 && phases == 1))
            return;
        context.Complain(values[^1], FormattableString.Invariant($"\"{key}\" has {values.Length} values{(phases == 1 ? " and the nameplate one phase" : "")}."),
            "One is expected for a single phase, three for three phases.", phases == 1 ? "Write one." : "Write one or three.", "too-many");
    }
}
