using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Messages;

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
            var (found, next) = hold.From is null
                ? (RulesMessages.HalfHoldGiven.End, RulesMessages.HalfHoldNextMissing.Start)
                : (RulesMessages.HalfHoldGiven.Start, RulesMessages.HalfHoldNextMissing.End);
            context.Problems.Add(hold.Origin, RulesMessages.HalfHold(found), null, RulesMessages.HalfHoldNext(next), "missing-key");
        }
        else if (hold is { From: null, Series: null, Readings.Length: < 2 })
        {
            context.Problems.Add(hold.Origin, RulesMessages.NoHold, null, RulesMessages.NoHoldNext, "missing-key");
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
            context.Complain(pressure, RulesMessages.TestBelowAtmosphere(new(pressure.Text)), null, QuantityMessages.NumberAndUnit, "impossible");
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
                context.Complain(given, RulesMessages.NoVacuum(new(given.Text)), RulesMessages.NoVacuumExpected, QuantityMessages.NumberAndUnit, "impossible");
        }

        if (context.Job.Evacuation is not { } evacuation)
            return;
        foreach (var happened in evacuation.Events)
        {
            if (happened.To is { } to && happened.What is { Value: not EvacuationEventKind.NitrogenBreak } what)
                context.Complain(to, RulesMessages.BreakPressure(new(what.Text)), null, RulesMessages.BreakPressureNext, "impossible");
        }

        var isolated = evacuation.Events.Where(e => e.What?.Value == EvacuationEventKind.Isolated).ToArray();
        if (isolated.Length > 1 && evacuation.Events.All(e => e.What?.Value is not (EvacuationEventKind.PumpOn or EvacuationEventKind.NitrogenBreak or EvacuationEventKind.Opened)))
        {
            context.Complain(isolated[1].What, RulesMessages.IsolatedTwice, null, RulesMessages.IsolatedTwiceNext, "impossible");
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
            context.Complain(recovered.After, RulesMessages.RecoveryLighter(new(recovered.Before.Text), new(recovered.After.Text)), null, RulesMessages.SwappedNext, "impossible");
        foreach (var cylinder in job.Cylinders)
        {
            if (cylinder is { Tare: { } tare, Before: { } gross } && gross.Value.Si < tare.Value.Si)
                context.Complain(gross, RulesMessages.BelowTare(new(gross.Text), new(tare.Text)), null, RulesMessages.BelowTareNext, "impossible");
        }

        if (job.Charging is not { } charging)
            return;
        foreach (var scale in charging.Scale)
        {
            if (scale.After?.Value.Si > scale.Before?.Value.Si)
                context.Complain(scale.After, RulesMessages.CylinderHeavier(new(scale.Before.Text), new(scale.After.Text)), null, RulesMessages.CylinderHeavierNext, "impossible");
        }

        if (charging.Added is { } added && charging.Scale.Length > 0)
            context.Complain(added, RulesMessages.AddedTwice, null, RulesMessages.AddedTwiceNext, "duplicate-key");
        if (charging.UnitArrived is null && job.Identity?.Work is { Value: WorkKind.NewInstallation } && job.Equipment?.System is { Value: not (SystemKind.Packaged or SystemKind.AirToWaterHeatPump or SystemKind.Chiller) })
        {
            context.Problems.Add(charging.Origin, RulesMessages.NoArrival, RulesMessages.NoArrivalExpected, RulesMessages.NoArrivalNext, "missing-key");
        }

        foreach (var change in charging.Events)
        {
            if (change is { Added: null, Removed: null, Note: null })
                context.Problems.Add(change.Origin, RulesMessages.EmptyEvent, null, RulesMessages.EmptyEventNext, "no-figure");
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
            context.Complain(given, RulesMessages.BelowVacuum(new(given.Text)), null, QuantityMessages.NumberAndUnit, "impossible");
    }

    private static void Check(RuleContext context, Reading reading, OperatingMode mode)
    {
        WetBulb(context, reading.OutdoorWetBulb, reading.OutdoorDryBulb, RulesMessages.WetBulbPlace.Outdoor);
        WetBulb(context, reading.ReturnWetBulb, reading.ReturnDryBulb, RulesMessages.WetBulbPlace.Return);
        WetBulb(context, reading.SupplyWetBulb, reading.SupplyDryBulb, RulesMessages.WetBulbPlace.Supply);
        foreach (var pressure in new[] { reading.VaporPressure, reading.LiquidPressure, reading.TrueSuctionPressure, reading.DischargePressure })
            NotBelowVacuum(context, pressure);
        var (high, pair) = reading.DischargePressure is { } discharge ? (discharge, RulesMessages.PressuresPair.SuctionDischarge)
            : mode == OperatingMode.Cooling ? (reading.LiquidPressure, RulesMessages.PressuresPair.SuctionLiquid)
            : (reading.VaporPressure, RulesMessages.PressuresPair.SuctionVapor);
        Higher(context, pair, reading.TrueSuctionPressure, high, RulesMessages.SuctionNext);
        if (mode == OperatingMode.Cooling)
            Higher(context, RulesMessages.PressuresPair.VaporLiquid, reading.VaporPressure, reading.LiquidPressure, RulesMessages.VaporNext);
    }

    private static void WetBulb(RuleContext context, Given<Temperature>? wet, Given<Temperature>? dry, RulesMessages.WetBulbPlace place)
    {
        if (wet is null || dry is null || wet.Value.Si <= dry.Value.Si + SensorScatter)
            return;
        context.Complain(wet, RulesMessages.WetBulb(place, new(wet.Text), new(dry.Text)), RulesMessages.WetBulbExpected, RulesMessages.SwappedNext, "impossible");
    }

    private static void Higher(RuleContext context, RulesMessages.PressuresPair pair, Given<StatedPressure>? low, Given<StatedPressure>? high, Message advice)
    {
        if (low is null || high is null || low.Value.ToAbsolute(context.Atmosphere).Si <= high.Value.ToAbsolute(context.Atmosphere).Si)
            return;
        context.Complain(low, RulesMessages.Pressures(pair, new(low.Text), new(high.Text)), null, advice, "impossible");
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
                context.Complain(now, RulesMessages.NotAfter(new(now.Text), new(before.Text)), RulesMessages.FanTableExpected, RulesMessages.FanTableNext, "chart");
        }

        if (air.Airflow is not { Method: { } method } flow)
            return;
        RulesMessages.NoAirFlowNextMethod? missing = method.Value switch
        {
            AirflowMethod.HeatRise when flow.HeatRise is null => RulesMessages.NoAirFlowNextMethod.HeatRise,
            AirflowMethod.Traverse when flow.Traverse is null && flow.Value is null => RulesMessages.NoAirFlowNextMethod.Traverse,
            AirflowMethod.Hood when flow.Hood.Length == 0 && flow.Value is null => RulesMessages.NoAirFlowNextMethod.Hood,
            AirflowMethod.FanTable when air.FanTable is null => RulesMessages.NoAirFlowNextMethod.FanTable,
            AirflowMethod.PressureDrop or AirflowMethod.UnitDisplay when flow.Value is null => RulesMessages.NoAirFlowNextMethod.Value,
            _ => null,
        };
        if (missing is { } needed)
            context.Complain(method, RulesMessages.NoAirFlow(new(method.Text)), null, RulesMessages.NoAirFlowNext(needed), "missing-key");
        if (flow.HeatRise is { } heat && heat is { Input: null, Output: null } && (heat.Volts is null || heat.Amps is null))
            context.Problems.Add(heat.Origin, RulesMessages.NoHeat, null, RulesMessages.NoHeatNext, "missing-key");
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
            context.Complain(lowest, RulesMessages.VoltageDrop(new(lowest.Text), new(before.Text)), null, RulesMessages.SwappedNext, "impossible");
    }

    private static void Count<T>(RuleContext context, ImmutableArray<Given<T>> values, string key, int? phases)
    {
        if (values.Length is 0 or 1 or 3 && !(values.Length == 3 && phases == 1))
            return;
        var (found, next) = phases == 1
            ? (RulesMessages.SinglePhaseValues(new(key), values.Length), RulesMessages.SinglePhaseValuesNext)
            : (RulesMessages.PhaseValues(new(key), values.Length), RulesMessages.PhaseValuesNext);
        context.Complain(values[^1], found, RulesMessages.PhaseValuesExpected, next, "too-many");
    }
}
