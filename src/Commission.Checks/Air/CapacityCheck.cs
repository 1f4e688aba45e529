using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Total, sensible and latent capacity on the air side. Information: a rating holds at its own temperatures.</summary>
internal sealed class CapacityCheck : ICheck
{
    public string Id => "air.capacity";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var capacity = context.Get<AirCapacity>();
        if (!capacity.HasSubject)
            yield break;
        var finding = capacity.UseIn(context, context.Finding(this, capacity.Row?.Time));
        if (capacity.Total is not { } total)
        {
            yield return finding.NotEvaluated(capacity.WhyNot!, capacity.Todo!, capacity.InFile);
            yield break;
        }

        var present = context.Present;
        var latent = total - capacity.Sensible;
        var ratio = capacity.Sensible / total;
        var rated = context.Job.Equipment.Capacity;
        finding.Use(AirMessages.ReadingRatedCapacity, rated).Measure(total, DisplayKind.Capacity)
            .Step("Q_l", AirMessages.CapacityLatent, "Q − Q_s", $"{present.Text(total.Value, DisplayKind.Capacity)} − {present.Text(capacity.Sensible.Value, DisplayKind.Capacity)}", present.Text(latent, DisplayKind.Capacity), AirMessages.Definition)
            .Step("SHR", AirMessages.CapacityRatio, "Q_s / Q", $"{present.Text(capacity.Sensible.Value, DisplayKind.Capacity)} / {present.Text(total.Value, DisplayKind.Capacity)}", present.Text(ratio, DisplayKind.Number), AirMessages.Definition);
        if (capacity.Row!.Settling.Block is { } early)
            finding.Remark(AirMessages.CapacityNotSettled(early));
        if (latent.Value + latent.Expanded < 0)
            finding.Remark(AirMessages.CapacityWetBulbWrong);
        var against = rated is { } plate && plate.Value.Si > 0
            ? AirMessages.CapacityAgainstPlate(new(plate.Text), present.Value(total.Value / plate.Value.Si, DisplayKind.Percentage, 0))
            : null;
        yield return finding.Remark(against).Information(
            AirMessages.CapacityWas(present.InMessage(total, DisplayKind.Capacity), new(capacity.Row.Time), present.InMessage(capacity.Sensible, DisplayKind.Capacity)),
            AirMessages.CapacityKind);
    }
}

/// <summary>
/// Heat the air gives up in cooling, from its mass flow and the enthalpies of return and supply air. Sensible heat counts what cooling at the
/// return's moisture would take; the rest is latent, so that the two close exactly. The heat the condensate carries away stays in the total.
/// </summary>
internal sealed class AirCapacity : IAnalysis<AirCapacity>
{
    private const double BtuPerHour = ConversionFactors.Btu / 3600;
    private const double BtuPerPound = ConversionFactors.Btu / ConversionFactors.Pound;
    private const double CubicFootPerMinute = ConversionFactors.CubicFoot / 60;

    private AirCapacity()
    {
    }

    /// <summary>Whether the job has anything a capacity could be made of: an airflow, or both states of the air.</summary>
    public bool HasSubject { get; private init; }

    /// <summary>Why there is no capacity, without a full stop; null when there is one.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>What would help; null when there is one.</summary>
    public Message? Todo { get; private init; }

    /// <summary>How that is written in the job file; null where the words say it.</summary>
    public string? InFile { get; private init; }

    /// <summary>Total heat, W; null when it is not known.</summary>
    public Uncertain? Total { get; private init; }

    /// <summary>Sensible heat, W.</summary>
    public Uncertain Sensible { get; private init; } = Uncertain.Exact(0);

    /// <summary>The row of readings; null when there is none.</summary>
    public ChargeRow? Row { get; private init; }

    private AirflowRoute? Route { get; init; }

    private ImmutableArray<CorrectedReading> Readings { get; init; } = [];

    private ImmutableArray<TraceStep> Steps { get; init; } = [];

    /// <inheritdoc/>
    public static AirCapacity Create(CheckContext context)
    {
        var states = context.Get<AirStates>();
        var route = context.Get<AirflowRoutes>().Chosen;
        if (states.Row is null || states.Row.Mode == OperatingMode.Heating || (route is null && !states.AreKnown))
            return new AirCapacity();
        var readings = new[] { states.Return, states.Supply }.OfType<AirState>().SelectMany(s => s.Readings).ToImmutableArray();
        AirCapacity Not(Message why, Message todo, string? inFile = null) => new() { HasSubject = true, WhyNot = why, Todo = todo, InFile = inFile, Row = states.Row, Route = route, Readings = readings };
        if (route is null)
            return Not(AirMessages.AirflowUnknown, AirMessages.AirflowUnknownNext);
        if (route.Value is not { } flow)
            return Not(AirMessages.AirflowUnknownWhy(route.WhyNot!), route.Todo!, route.InFile);
        if (states.Return is not { WhyNot: null } entering)
            return Not(states.Return?.WhyNot ?? AirMessages.ReturnNotRead, states.Return?.Todo ?? AirMessages.ReturnNotReadNext);
        if (states.Supply is not { WhyNot: null } leaving)
            return Not(states.Supply?.WhyNot ?? AirMessages.SupplyNotRead, states.Supply?.Todo ?? AirMessages.SupplyNotReadNext);

        // A hood at the supply grilles counts supply air; every other route counts what the blower draws in.
        var counted = route.Method == AirflowMethod.Hood ? leaving : entering;
        var mass = flow / counted.Volume;
        var total = mass * (entering.Enthalpy - leaving.Enthalpy);
        var heatCapacity = (entering.HumidityRatio * 1860) + 1006;
        var sensible = mass * heatCapacity * (entering.DryBulb - leaving.DryBulb);
        return new AirCapacity
        {
            HasSubject = true,
            Total = total,
            Sensible = sensible,
            Row = states.Row,
            Route = route,
            Readings = readings,
            Steps = MakeSteps(context, new(flow, counted, mass, entering, leaving, total, sensible)),
        };
    }

    /// <summary>Names in a finding what the capacity rests on, and adds how it came about.</summary>
    public FindingBuilder UseIn(CheckContext context, FindingBuilder finding)
    {
        Route?.UseIn(finding);
        finding.UseAll(Readings);
        foreach (var use in context.Get<SiteAtmosphere>().Uses)
            finding.Use(use);
        return finding.Add(Steps);
    }

    // Volume flow and the air it was counted in, mass flow of dry air, the air before and after the coil, and the heat it gave up.
    private sealed record Balance(Uncertain Flow, AirState Counted, Uncertain Mass, AirState Entering, AirState Leaving, Uncertain Total, Uncertain Sensible);

    private static ImmutableArray<TraceStep> MakeSteps(CheckContext context, Balance balance)
    {
        var (flow, counted, mass, entering, leaving, total, sensible) = balance;
        var present = context.Present;
        var atmosphere = context.Get<SiteAtmosphere>();
        var difference = entering.Enthalpy - leaving.Enthalpy;
        var density = AirFactors.DensityRatio(atmosphere.Value.Value, null);
        var field = AirFactors.Total(density) * (flow.Value / CubicFootPerMinute) * (difference.Value / BtuPerPound) * BtuPerHour;
        string H(AirState air) => present.Text(AirText.Enthalpy(present, air.Enthalpy).Value, DisplayKind.Enthalpy);
        return
        [
            atmosphere.Step,
            new TraceStep("ṁ", present.Text(AirMessages.CapacityMassFlow), "q_V / v", present.Text(AirMessages.CapacityFlowAt(present.InMessage(flow.Value, DisplayKind.AirFlow), counted.Name)), present.Text(mass.Value, DisplayKind.MassFlow), present.Text(AirState.Source)),
            new TraceStep("Δh", present.Text(AirMessages.CapacityEnthalpy), "h_return − h_supply", $"{H(entering)} − {H(leaving)}", present.Text(difference, DisplayKind.Enthalpy), present.Text(AirState.Source)),
            new TraceStep("Q", present.Text(AirMessages.CapacityTotal), "ṁ · Δh", $"{present.Text(mass.Value, DisplayKind.MassFlow)} · {present.Text(difference.Value, DisplayKind.Enthalpy)}", present.Text(total, DisplayKind.Capacity), present.Text(AirMessages.CapacityTotalSource)),
            new TraceStep(
                "Q_field", present.Text(AirMessages.CapacityField), "4.5·(p_atm/14.696 psia)·cfm·Δh",
                string.Create(CultureInfo.InvariantCulture, $"{AirFactors.Total(density):0.000} · {flow.Value / CubicFootPerMinute:0} cfm · {difference.Value / BtuPerPound:0.000} Btu/lb"),
                present.Text(field, DisplayKind.Capacity), present.Text(AirFactors.Source)),
            new TraceStep(
                "Q_s", present.Text(AirMessages.CapacitySensible), "ṁ · (1.006 + 1.86·W_return) · (t_return − t_supply)",
                $"{present.Text(entering.DryBulb.Value, DisplayKind.Temperature)} − {present.Text(leaving.DryBulb.Value, DisplayKind.Temperature)}", present.Text(sensible, DisplayKind.Capacity), present.Text(AirState.Source)),
        ];
    }
}

/// <summary>The heat the air gave up against the heat the refrigerant took up. Information with E_n.</summary>
internal sealed class EnergyBalanceCheck : ICheck
{
    public string Id => "air.energy-balance";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var air = context.Get<AirCapacity>();
        if (air is { Total: { } total, Row: { } row } && row.Mode == OperatingMode.Cooling && ChargeCycle.Has(row))
            yield return Balance(context, air, row, total);
    }

    private Finding Balance(CheckContext context, AirCapacity air, ChargeRow row, Uncertain total)
    {
        var present = context.Present;
        var finding = air.UseIn(context, context.Finding(this, row.Time));
        var cycle = ChargeCycle.Of(context, row);
        finding.UseAll(cycle.Readings);
        if (cycle.WhyNot is { } why)
            return finding.NotEvaluated(why, AirMessages.BalanceCircuitNext);
        var flow = total / cycle.Capacity;
        finding
            .Step("q", AirMessages.BalanceHeat, "h₁ − h₃", $"{present.Text(cycle.Suction.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(cycle.Liquid.Enthalpy, DisplayKind.Enthalpy)}", present.Text(cycle.Capacity, DisplayKind.Enthalpy), context.Get<CircuitSaturation>().Source)
            .Step("ṁ_r", AirMessages.BalanceFlow, "Q_air / q", $"{present.Text(total.Value, DisplayKind.Capacity)} / {present.Text(cycle.Capacity.Value, DisplayKind.Enthalpy)}", present.Text(flow, DisplayKind.MassFlow), AirMessages.Definition);
        if (RefrigerantSide(context, finding, row, cycle) is not { } other)
        {
            return finding.Measure(flow, DisplayKind.MassFlow).Information(
                AirMessages.BalanceOneSide(present.InMessage(total, DisplayKind.Capacity), new(row.Time), present.InMessage(flow, DisplayKind.MassFlow), new(context.Get<CircuitSaturation>().Designation)),
                AirMessages.BalanceOneSideKind);
        }

        var agreement = Agreement.Of(total, other);
        finding.Measure(agreement.Difference, DisplayKind.Capacity)
            .Step("E_n", AirMessages.BalanceAgreement, "|Q_air − Q_ref| / U(Q_air − Q_ref)", $"{present.Text(agreement.Difference.Value, DisplayKind.Capacity)}, U {present.Text(agreement.Difference.Expanded, DisplayKind.Capacity)}", agreement.NormalizedError.ToString("0.00", CultureInfo.InvariantCulture), Cited.FromMemory("ISO 13528 and ISO/IEC 17043"));
        if (!agreement.Agrees)
            finding.LookAt(AirMessages.CapacitiesDifferNext);
        var (byAir, byRefrigerant, at) = (present.InMessage(total, DisplayKind.Capacity), present.InMessage(other, DisplayKind.Capacity), new TextValue(row.Time));
        return finding.Information(
            agreement.Agrees ? AirMessages.CapacitiesAgree(byAir, byRefrigerant, at) : AirMessages.CapacitiesDiffer(byAir, byRefrigerant, at, present.InMessage(agreement.Difference.Value < 0 ? -agreement.Difference : agreement.Difference, DisplayKind.Capacity)),
            AirMessages.CapacitiesKind);
    }

    private static Uncertain? RefrigerantSide(CheckContext context, FindingBuilder finding, ChargeRow row, ChargeCycle cycle)
    {
        if (row.Written.Power is not { } power || cycle.Discharge is not { } hot || row.DischargeLine is not { } line || context.Get<CircuitRefrigerant>().Fluid is not { } fluid
            || context.Limits.Find(LimitIds.AssumptionCompressorHeatShare) is not { Target: { } share } assumed || assumed.Companion("within") is not { } within)
        {
            return null;
        }

        var present = context.Present;
        var input = context.Readings.Plain(present.Text(AirMessages.ReadingPower(new(row.Time))), ReadingName.Electrical, power, DisplayKind.Power);
        var cause = context.Causes.Enter(RootCause.FromHalfWidth(AirMessages.BalanceShare, AirMessages.BalanceShareSource, within), DisplayKind.Percentage);
        var s = context.Scope.Reading(share.Si, 1.0 * cause);
        var (low, vapor, high, liquid) = (row.VaporPressure!.Value, row.VaporLine!.Value, row.LiquidPressure!.Value, row.LiquidLine!.Value);
        var top = (row.DischargePressure ?? row.LiquidPressure)!.Value;
        double Factor(double[] x) =>
            fluid.At(x[1], x[0], Fluids.Phase.Vapor) is { Ok: true, Value: var one }
            && fluid.At(x[3], x[2], Fluids.Phase.Liquid) is { Ok: true, Value: var three }
            && fluid.At(x[5], x[4], Fluids.Phase.Vapor) is { Ok: true, Value: var two } && two.Enthalpy > one.Enthalpy
                ? (one.Enthalpy - three.Enthalpy) / (two.Enthalpy - one.Enthalpy)
                : double.NaN;
        var factor = Uncertain.Apply(Factor, [low, vapor, high, liquid, top, line.Value]);
        if (!double.IsFinite(factor.Value) || !double.IsFinite(factor.StandardUncertainty))
            return null;
        var heat = s * input.Value * factor;
        finding.Use(input)
            .Step("w", AirMessages.BalanceCompression, "h₂ − h₁", $"{present.Text(hot.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(cycle.Suction.Enthalpy, DisplayKind.Enthalpy)}", present.Text(hot.Enthalpy - cycle.Suction.Enthalpy, DisplayKind.Enthalpy), context.Get<CircuitSaturation>().Source)
            .Step("Q_ref", AirMessages.BalanceRefrigerant, "s · P · q / w", $"{share.Text} · {power.Text} · {present.Text(cycle.Capacity.Value, DisplayKind.Enthalpy)} / {present.Text(hot.Enthalpy - cycle.Suction.Enthalpy, DisplayKind.Enthalpy)}", present.Text(heat, DisplayKind.Capacity), assumed.Source);
        return heat;
    }
}
