using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Interpolation;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.AirReadings;

/// <summary>One way to the airflow, or why it leads nowhere.</summary>
internal sealed record AirflowRoute
{
    public required AirflowMethod Method { get; init; }

    /// <summary>The method in a sentence: <c>by the maker's fan table</c>.</summary>
    public required Message Words { get; init; }

    /// <summary>Volume flow where it was found, m³/s; null when there is none.</summary>
    public Uncertain? Value { get; init; }

    /// <summary>Why there is none, without a full stop; null when there is one.</summary>
    public Message? WhyNot { get; init; }

    /// <summary>What would help; null when there is one.</summary>
    public Message? Todo { get; init; }

    /// <summary>How that is written in the job file; null where the words say it.</summary>
    public string? InFile { get; init; }

    /// <summary>What makes a pass conditional, without a full stop; null when nothing does.</summary>
    public Message? Reservation { get; init; }

    /// <summary>Readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; init; } = [];

    /// <summary>What else of the job it rests on.</summary>
    public ImmutableArray<ReadingUse> Uses { get; init; } = [];

    /// <summary>How it came about.</summary>
    public ImmutableArray<TraceStep> Steps { get; init; } = [];

    /// <summary>Names in a finding what the airflow rests on, and adds how it came about.</summary>
    public FindingBuilder UseIn(FindingBuilder finding)
    {
        finding.UseAll(Readings);
        foreach (var use in Uses)
            finding.Use(use);
        return finding.Add(Steps);
    }
}

/// <summary>
/// The airflow by every route the job opens: the maker's fan table at the external static pressure, a known heat and its rise, velocities
/// across a duct, a hood at the grilles, a number read directly. The one the job names counts; the others are compared with it.
/// </summary>
internal sealed class AirflowRoutes : IAnalysis<AirflowRoutes>
{
    private readonly CheckContext _context;

    private AirflowRoutes(CheckContext context)
    {
        _context = context;
        if (context.Job.Air is not { } air)
            return;
        var written = air.Airflow;
        var routes = new List<AirflowRoute>();
        if (written is not null)
            routes.Add(ByMethod(air, written));
        if (air.FanTable is not null && written?.Method.Value != AirflowMethod.FanTable)
            routes.Add(FanTable(air));
        if (written is { HeatRise: { } heat, Method.Value: not AirflowMethod.HeatRise })
            routes.Add(HeatRise(heat, written.With));
        if (written is { Traverse: { } traverse, Method.Value: not AirflowMethod.Traverse })
            routes.Add(Traverse(traverse, written.With));
        if (written is { Hood.IsEmpty: false, Method.Value: not AirflowMethod.Hood })
            routes.Add(Hood(written));

        // Without a named method a fan table alone is a route, if it leads anywhere.
        if (routes.Count > 0)
        {
            Chosen = routes[0];
            Others = [.. routes.Skip(1).Where(r => r.Value is not null)];
        }
    }

    /// <summary>The route that counts; null when the job opens none.</summary>
    public AirflowRoute? Chosen { get; }

    /// <summary>Other routes that led to a number.</summary>
    public ImmutableArray<AirflowRoute> Others { get; } = [];

    /// <summary>Return and supply air of the heat-rise test; null when there was none.</summary>
    public (CorrectedReading Entering, CorrectedReading Leaving)? HeatRiseAir => _context.Job.Air?.Airflow is { HeatRise: { } heat } written ? AirOf(heat, written.With) : null;

    /// <inheritdoc/>
    public static AirflowRoutes Create(CheckContext context) => new(context);

    private AirflowRoute ByMethod(AirSide air, Airflow written) => written.Method.Value switch
    {
        AirflowMethod.FanTable => FanTable(air),
        AirflowMethod.HeatRise when written.HeatRise is { } heat => HeatRise(heat, written.With),
        AirflowMethod.Traverse when written.Traverse is { } traverse => Traverse(traverse, written.With),
        AirflowMethod.Hood when !written.Hood.IsEmpty => Hood(written),
        _ when written.Value is { } value => Direct(written, value),
        _ => None(written.Method.Value, CommonMessages.AsWritten(new(written.Method.Text)), AirMessages.WayReadingsNotWritten, AirMessages.FlowNotReadNext) with { InFile = "air: {airflow: {value: 1200 cfm}}" },
    };

    private AirflowRoute Direct(Airflow written, Given<VolumeFlow> value) => new()
    {
        Method = written.Method.Value,
        Words = AirMessages.WayWritten(new(written.Method.Text)),
        Value = Flow(AirMessages.WayName, value, written.With).Value,
        Readings = [Flow(AirMessages.WayName, value, written.With)],
    };

    private AirflowRoute FanTable(AirSide air)
    {
        var reading = _context.Get<StaticReading>();
        if (air.FanTable is not { Points.IsEmpty: false } table)
            return None(AirflowMethod.FanTable, AirMessages.WayFanTable, AirMessages.FanTableNotWritten, AirMessages.FanTableNotWrittenNext);
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        uses.AddRange(reading.Uses);
        void Name<T>(Message name, Given<T>? given)
        {
            if (given is not null)
                uses.Add(given.Use(_context.Present.Text(name)));
        }

        Name(AirMessages.FanTableSetting, table.Setting);
        Name(AirMessages.FanTableBlowerSetting, air.BlowerSetting);
        foreach (var point in table.Points)
        {
            Name(AirMessages.FanTableStatic(new(point.Static.Text)), point.Static);
            Name(AirMessages.FanTableAirflow(new(point.Static.Text)), point.Airflow);
        }

        AirflowRoute Not(Message why, Message todo) => None(AirflowMethod.FanTable, AirMessages.WayFanTable, why, todo) with { Readings = [.. reading.Readings], Uses = uses.ToImmutable() };
        if (table is { Setting: { } made } && air.BlowerSetting is { } set && !string.Equals(made.Value.Trim(), set.Value.Trim(), StringComparison.OrdinalIgnoreCase))
            return Not(AirMessages.FanTableOtherSetting(new(made.Value), new(set.Value)), AirMessages.FanTableOtherSettingNext);
        if (reading.External is not { } external)
            return Not(reading.WhyNot!, reading.Todo!) with { InFile = reading.InFile };
        if (reading.TooLow is { } low)
            return Not(low, AirMessages.StaticDropNext);
        if (reading.TooHigh is { } high)
            return Not(high, AirMessages.StaticDropNext);
        if (table.Points.Length < 2)
            return Not(AirMessages.FanTableOnePoint, AirMessages.FanTableOnePointNext);
        var present = _context.Present;
        var points = new InterpolationTable(table.Points.Select(p => p.Static.Value.Si), table.Points.Select(p => (double?)p.Airflow.Value.Si));
        if (points.Read(external).Value is not { } read)
            return Not(AirMessages.FanTableOutside(present.InMessage(external.Value, DisplayKind.StaticPressure), new(table.Points[0].Static.Text), new(table.Points[^1].Static.Text)), AirMessages.FanTableOutsideNext);
        var own = _context.Causes.Enter(
            RootCause.FromHalfWidth(AirMessages.FanTableCause, AirMessages.FanTableCauseSource, _context.Assume(LimitIds.AssumptionAirflowFanTable)), DisplayKind.Percentage);
        var value = read + _context.Scope.Reading(0, read.Value * own);
        return new AirflowRoute
        {
            Method = AirflowMethod.FanTable,
            Words = AirMessages.WayFanTable,
            Value = value,
            Reservation = reading.Unclear,
            Readings = [.. reading.Readings],
            Uses = uses.ToImmutable(),
            Steps =
            [
                .. reading.Steps,
                new TraceStep(
                    "q_V", present.Text(AirMessages.FanTableStep), present.Text(AirMessages.FanTableFormula),
                    present.Text(AirMessages.FanTableNumbers(present.InMessage(external.Value, DisplayKind.StaticPressure), new([.. table.Points.Select(p => AirMessages.FanTablePoint(new(p.Static.Text), new(p.Airflow.Text)))], ListJoin.Comma))),
                    present.Text(value, DisplayKind.AirFlow), table.From.Value),
            ],
        };
    }

    private AirflowRoute HeatRise(HeatRise heat, ImmutableArray<Given<string>> with)
    {
        var present = _context.Present;
        var (entering, leaving) = AirOf(heat, with);
        var readings = ImmutableArray.CreateBuilder<CorrectedReading>();
        readings.AddRange(entering, leaving);
        AirflowRoute Not(Message why, Message todo) => None(AirflowMethod.HeatRise, AirMessages.WayHeatRise, why, todo) with { Readings = readings.ToImmutable() };
        Uncertain watts;
        string heatText;
        if (heat.Output is { } output)
        {
            readings.Add(Written.Rating(_context, present.Text(AirMessages.HeatOutput), output, DisplayKind.Capacity));
            (watts, heatText) = (readings[^1].Value, output.Text);
        }
        else if (heat.Input is { } input)
        {
            readings.Add(_context.Readings.Plain(present.Text(AirMessages.HeaterInput), ReadingName.Electrical, input, DisplayKind.Power, with));
            (watts, heatText) = (readings[^1].Value, input.Text);
        }
        else if (heat is { Volts: { } volts, Amps: { } amps })
        {
            if (_context.Job.Equipment.Nameplate?.Phases?.Value == 3)
                return Not(AirMessages.HeatThreePhases, AirMessages.HeaterPowerNext) with { InFile = "air: {airflow: {heat rise: {input: 9.6 kW}}}" };
            readings.Add(_context.Readings.Plain(present.Text(AirMessages.HeaterVoltage), ReadingName.Voltage, volts, DisplayKind.Voltage, with));
            readings.Add(_context.Readings.Plain(present.Text(AirMessages.HeaterCurrent), ReadingName.Current, amps, DisplayKind.Current, with));
            (watts, heatText) = (readings[^2].Value * readings[^1].Value, $"{volts.Text} · {amps.Text}");
        }
        else
        {
            return Not(AirMessages.HeatNotRead, AirMessages.HeatNotReadNext) with { InFile = "air: {airflow: {heat rise: {input: 9.6 kW}}}" };
        }

        var rise = leaving.Value - entering.Value;
        if (!(rise.Value > 0))
            return Not(AirMessages.HeatNoRise, AirMessages.HeatSteadyNext);
        var atmosphere = _context.Get<SiteAtmosphere>();
        var density = Uncertain.Apply((p, t) => AirFactors.DensityRatio(p, t), atmosphere.Value, entering.Value);
        var factor = _context.Causes.Enter(
            RootCause.FromHalfWidth(AirMessages.HeatFactorCause, AirMessages.HeatFactorCauseSource, _context.Assume(LimitIds.AssumptionAirflowHeatRise)), DisplayKind.Percentage);
        // The blower warms the air it moves: by its power where that was read, else by what blowers take.
        var blower = Uncertain.Exact(0);
        if (_context.Job.Air?.BlowerPower is { } fan)
        {
            readings.Add(_context.Readings.Plain(present.Text(AirMessages.ReadingBlowerPower), ReadingName.Electrical, fan, DisplayKind.Power, with));
            watts += readings[^1].Value;
            heatText = $"{heatText} + {fan.Text}";
        }
        else
        {
            var usual = _context.Limits.Require(LimitIds.AssumptionAirflowBlowerHeat);
            blower = _context.Scope.Reading(usual.Target!.Si, 1.0 * _context.Causes.Enter(
                RootCause.FromHalfWidth(AirMessages.HeatBlowerCause, AirMessages.HeatBlowerCauseSource, usual.Companion("within") ?? usual.Target!.Si), DisplayKind.FanPower));
        }

        if (!(HeatRiseAirflow.FromHeat(watts.Value, rise.Value, density.Value, blower.Value) > 0))
            return Not(AirMessages.HeatBlowerAlone, AirMessages.HeatSteadyNext);
        var flow = Uncertain.Apply(v => HeatRiseAirflow.FromHeat(v[0], v[1], v[2], v[3]), [watts, rise, density, blower]);
        var value = flow + _context.Scope.Reading(0, flow.Value * factor);
        var isElectric = heat.Output is null;
        return new AirflowRoute
        {
            Method = AirflowMethod.HeatRise,
            Words = AirMessages.WayHeatRise,
            Value = value,
            Readings = readings.ToImmutable(),
            Uses = atmosphere.Uses,
            Steps =
            [
                atmosphere.Step,
                new TraceStep(
                    "d", present.Text(AirMessages.HeatDensity), "(p_atm/14.696 psia)·(529.67/(T_return + 459.67))",
                    $"{present.Text(atmosphere.Value.Value, DisplayKind.AbsolutePressure, 3)}, {present.Text(entering.Value.Value, DisplayKind.Temperature)}",
                    density.Value.ToString("0.0000", CultureInfo.InvariantCulture), present.Text(AirFactors.Source)),
                new TraceStep(
                    "ΔT", present.Text(AirMessages.HeatRiseName), "T_supply − T_return",
                    $"{present.Text(leaving.Value.Value, DisplayKind.Temperature)} − {present.Text(entering.Value.Value, DisplayKind.Temperature)}",
                    present.Text(rise, DisplayKind.TemperatureDifference), present.Text(AirMessages.Definition)),
                new TraceStep(
                    "q_V", present.Text(AirMessages.WayHeatRiseName), present.Text(isElectric ? HeatRiseAirflow.ElectricFormula : HeatRiseAirflow.GasFormula),
                    string.Create(CultureInfo.InvariantCulture, $"{heatText}, 1.08·{density.Value:0.0000}, {present.Text(rise.Value, DisplayKind.TemperatureDifference)}"),
                    present.Text(value, DisplayKind.AirFlow), present.Text(HeatRiseAirflow.Source)),
            ],
        };
    }

    private AirflowRoute Traverse(Traverse traverse, ImmutableArray<Given<string>> with)
    {
        var present = _context.Present;
        var area = Written.Reading(_context, present.Text(AirMessages.TraverseArea), traverse.Area, DisplayKind.Area);
        if (traverse.Velocities.IsEmpty)
            return None(AirflowMethod.Traverse, AirMessages.WayTraverse, AirMessages.TraverseNotWritten, AirMessages.TraverseNotWrittenNext);
        var velocities = traverse.Velocities.Select((v, i) => _context.Readings.Plain(
            present.Text(AirMessages.TraverseVelocity(i + 1)), ReadingName.AirVelocity, v, DisplayKind.Velocity, with)).ToImmutableArray();
        var n = velocities.Length;
        var mean = velocities.Select(v => v.Value).Aggregate((a, b) => a + b) / n;

        // The points of a traverse stand for their share of the area: their scatter says how well so few of them do.
        var scatter = n > 1 ? TypeA.Moments([.. velocities.Select(v => v.Value.Value)]).StandardDeviation / Math.Sqrt(n) : 0;
        if (scatter > 0)
            mean += _context.Scope.Reading(0, 1.0 * _context.Causes.Enter(new RootCause(AirMessages.TraverseScatter, AirMessages.TraverseScatterSource(n), scatter, n - 1), DisplayKind.Velocity));
        var value = mean * area.Value;
        return new AirflowRoute
        {
            Method = AirflowMethod.Traverse,
            Words = AirMessages.WayTraverse,
            Value = value,
            Reservation = n < 2 ? AirMessages.TraverseOne : null,
            Readings = [area, .. velocities],
            Steps =
            [
                new TraceStep("v_m", present.Text(AirMessages.TraverseMean), present.Text(AirMessages.TraverseMeanFormula), present.Symbols(string.Join(", ", traverse.Velocities.Select(v => v.Text))), present.Text(mean, DisplayKind.Velocity), present.Text(AirMessages.Definition)),
                new TraceStep("q_V", present.Text(AirMessages.WayTraverseName), "v_m · A", $"{present.Text(mean.Value, DisplayKind.Velocity)} · {traverse.Area.Text}", present.Text(value, DisplayKind.AirFlow), present.Text(AirMessages.Definition)),
            ],
        };
    }

    private AirflowRoute Hood(Airflow written)
    {
        var present = _context.Present;
        var readings = written.Hood.Select((v, i) => Flow(AirMessages.WayHoodReading(i + 1), v, written.With)).ToImmutableArray();
        var value = readings.Select(r => r.Value).Aggregate((a, b) => a + b);
        return new AirflowRoute
        {
            Method = AirflowMethod.Hood,
            Words = AirMessages.WayHood,
            Value = value,
            Readings = readings,
            Steps = [new TraceStep("q_V", present.Text(AirMessages.WayHoodName), present.Text(AirMessages.WayHoodFormula), present.Symbols(string.Join(" + ", written.Hood.Select(v => v.Text))), present.Text(value, DisplayKind.AirFlow), present.Text(AirMessages.Definition))],
        };
    }

    private (CorrectedReading Entering, CorrectedReading Leaving) AirOf(HeatRise heat, ImmutableArray<Given<string>> with) => (
        _context.Readings.Temperature(_context.Present.Text(AirMessages.HeatReturnAir), ReadingName.ReturnAir, heat.Return, null, with),
        _context.Readings.Temperature(_context.Present.Text(AirMessages.HeatSupplyAir), ReadingName.SupplyAir, heat.Supply, null, with));

    private CorrectedReading Flow(Message name, Given<VolumeFlow> given, ImmutableArray<Given<string>> with) => _context.Readings.Plain(_context.Present.Text(name), ReadingName.Airflow, given, DisplayKind.AirFlow, with);

    private static AirflowRoute None(AirflowMethod method, Message words, Message why, Message todo) => new() { Method = method, Words = words, WhyNot = why, Todo = todo };
}
