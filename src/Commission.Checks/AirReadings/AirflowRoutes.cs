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
    public required string Words { get; init; }

    /// <summary>Volume flow where it was found, m³/s; null when there is none.</summary>
    public Uncertain? Value { get; init; }

    /// <summary>Why there is none, without a full stop; null when there is one.</summary>
    public string? WhyNot { get; init; }

    /// <summary>What would help; null when there is one.</summary>
    public Message? Todo { get; init; }

    /// <summary>How that is written in the job file; null where the words say it.</summary>
    public string? InFile { get; init; }

    /// <summary>What makes a pass conditional, without a full stop; null when nothing does.</summary>
    public string? Reservation { get; init; }

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
        _ => None(written.Method.Value, written.Method.Text, "its readings are not written", AirMessages.FlowNotReadNext) with { InFile = "air: {airflow: {value: 1200 cfm}}" },
    };

    private AirflowRoute Direct(Airflow written, Given<VolumeFlow> value) => new()
    {
        Method = written.Method.Value,
        Words = $"by {written.Method.Text}",
        Value = Flow("airflow", value, written.With).Value,
        Readings = [Flow("airflow", value, written.With)],
    };

    private AirflowRoute FanTable(AirSide air)
    {
        const string Words = "by the maker's fan table";
        var reading = _context.Get<StaticReading>();
        if (air.FanTable is not { Points.IsEmpty: false } table)
            return None(AirflowMethod.FanTable, Words, "the maker's fan table is not written", "Take the fan table for the blower's setting from the manual.");
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        uses.AddRange(reading.Uses);
        void Name<T>(string name, Given<T>? given)
        {
            if (given is not null)
                uses.Add(given.Use(name));
        }

        Name("fan table: setting", table.Setting);
        Name("blower setting", air.BlowerSetting);
        foreach (var point in table.Points)
        {
            Name($"fan table at {point.Static.Text}: static pressure", point.Static);
            Name($"fan table at {point.Static.Text}: airflow", point.Airflow);
        }

        AirflowRoute Not(string why, Message todo) => None(AirflowMethod.FanTable, Words, why, todo) with { Readings = [.. reading.Readings], Uses = uses.ToImmutable() };
        if (table is { Setting: { } made } && air.BlowerSetting is { } set && !string.Equals(made.Value.Trim(), set.Value.Trim(), StringComparison.OrdinalIgnoreCase))
            return Not($"the fan table is for {made.Value} and the blower was set to {set.Value}", "Write the row of the fan table that belongs to the blower's setting.");
        if (reading.External is not { } external)
            return Not(reading.WhyNot!, reading.Todo!) with { InFile = reading.InFile };
        if (reading.TooLow is { } low)
            return Not(low, "Write the drop of that part, or read again on its other side.");
        if (reading.TooHigh is { } high)
            return Not(high, "Write the drop of that part, or read again on its other side.");
        if (table.Points.Length < 2)
            return Not("one point of a fan table cannot be interpolated", "Write the points of the table on both sides of the external static pressure.");
        var present = _context.Present;
        var points = new InterpolationTable(table.Points.Select(p => p.Static.Value.Si), table.Points.Select(p => (double?)p.Airflow.Value.Si));
        if (points.Read(external).Value is not { } read)
            return Not($"the external static pressure of {present.Text(external.Value, DisplayKind.StaticPressure)} lies outside the fan table, {table.Points[0].Static.Text} to {table.Points[^1].Static.Text}", "Write the table's further points, or measure the airflow another way.");
        var own = _context.Causes.Enter(
            RootCause.FromHalfWidth("fan table", "one blower against the maker's table, common practice", _context.Assume(LimitIds.AssumptionAirflowFanTable)), DisplayKind.Percentage);
        var value = read + _context.Scope.Reading(0, read.Value * own);
        return new AirflowRoute
        {
            Method = AirflowMethod.FanTable,
            Words = Words,
            Value = value,
            Reservation = reading.Unclear,
            Readings = [.. reading.Readings],
            Uses = uses.ToImmutable(),
            Steps =
            [
                .. reading.Steps,
                new TraceStep(
                    "q_V", "airflow by the maker's fan table", "table at ESP, linear between its points",
                    $"{present.Text(external.Value, DisplayKind.StaticPressure)} among {string.Join(", ", table.Points.Select(p => $"{p.Static.Text}: {p.Airflow.Text}"))}",
                    present.Text(value, DisplayKind.AirFlow), table.From.Value),
            ],
        };
    }

    private AirflowRoute HeatRise(HeatRise heat, ImmutableArray<Given<string>> with)
    {
        const string Words = "by the rise of a known heat";
        var present = _context.Present;
        var (entering, leaving) = AirOf(heat, with);
        var readings = ImmutableArray.CreateBuilder<CorrectedReading>();
        readings.AddRange(entering, leaving);
        AirflowRoute Not(string why, Message todo) => None(AirflowMethod.HeatRise, Words, why, todo) with { Readings = readings.ToImmutable() };
        Uncertain watts;
        string heatText;
        if (heat.Output is { } output)
        {
            readings.Add(Written.Rating(_context, "heat output", output, DisplayKind.Capacity));
            (watts, heatText) = (readings[^1].Value, output.Text);
        }
        else if (heat.Input is { } input)
        {
            readings.Add(_context.Readings.Plain("heater input", ReadingName.Electrical, input, DisplayKind.Power, with));
            (watts, heatText) = (readings[^1].Value, input.Text);
        }
        else if (heat is { Volts: { } volts, Amps: { } amps })
        {
            if (_context.Job.Equipment.Nameplate?.Phases?.Value == 3)
                return Not("volts times amperes is the power of one phase only, and the supply has three", AirMessages.HeaterPowerNext) with { InFile = "air: {airflow: {heat rise: {input: 9.6 kW}}}" };
            readings.Add(_context.Readings.Plain("heater voltage", ReadingName.Voltage, volts, DisplayKind.Voltage, with));
            readings.Add(_context.Readings.Plain("heater current", ReadingName.Current, amps, DisplayKind.Current, with));
            (watts, heatText) = (readings[^2].Value * readings[^1].Value, $"{volts.Text} · {amps.Text}");
        }
        else
        {
            return Not("the heat put into the air is not written", AirMessages.HeatNotReadNext) with { InFile = "air: {airflow: {heat rise: {input: 9.6 kW}}}" };
        }

        var rise = leaving.Value - entering.Value;
        if (!(rise.Value > 0))
            return Not("the supply air is no warmer than the return air", "Let the heat run until the supply temperature is steady, with the compressor off.");
        var atmosphere = _context.Get<SiteAtmosphere>();
        var density = Uncertain.Apply((p, t) => AirFactors.DensityRatio(p, t), atmosphere.Value, entering.Value);
        var factor = _context.Causes.Enter(
            RootCause.FromHalfWidth("sensible-heat factor", "1.08 for dry, 1.10 for moist air", _context.Assume(LimitIds.AssumptionAirflowHeatRise)), DisplayKind.Percentage);
        // The blower warms the air it moves: by its power where that was read, else by what blowers take.
        var blower = Uncertain.Exact(0);
        if (_context.Job.Air?.BlowerPower is { } fan)
        {
            readings.Add(_context.Readings.Plain("blower power", ReadingName.Electrical, fan, DisplayKind.Power, with));
            watts += readings[^1].Value;
            heatText = $"{heatText} + {fan.Text}";
        }
        else
        {
            var usual = _context.Limits.Require(LimitIds.AssumptionAirflowBlowerHeat);
            blower = _context.Scope.Reading(usual.Target!.Si, 1.0 * _context.Causes.Enter(
                RootCause.FromHalfWidth("heat of the blower", "its power is not written; what blowers take, AHRI 210/240 (from memory)", usual.Companion("within") ?? usual.Target!.Si), DisplayKind.FanPower));
        }

        if (!(HeatRiseAirflow.FromHeat(watts.Value, rise.Value, density.Value, blower.Value) > 0))
            return Not("the rise is no more than a blower alone makes", "Let the heat run until the supply temperature is steady, with the compressor off.");
        var flow = Uncertain.Apply(v => HeatRiseAirflow.FromHeat(v[0], v[1], v[2], v[3]), [watts, rise, density, blower]);
        var value = flow + _context.Scope.Reading(0, flow.Value * factor);
        var isElectric = heat.Output is null;
        return new AirflowRoute
        {
            Method = AirflowMethod.HeatRise,
            Words = Words,
            Value = value,
            Readings = readings.ToImmutable(),
            Uses = atmosphere.Uses,
            Steps =
            [
                atmosphere.Step,
                new TraceStep(
                    "d", "density of the return air against standard air", "(p_atm/14.696 psia)·(529.67/(T_return + 459.67))",
                    $"{present.Text(atmosphere.Value.Value, DisplayKind.AbsolutePressure, 3)}, {present.Text(entering.Value.Value, DisplayKind.Temperature)}",
                    density.Value.ToString("0.0000", CultureInfo.InvariantCulture), present.Text(AirFactors.Source)),
                new TraceStep(
                    "ΔT", "temperature rise", "T_supply − T_return",
                    $"{present.Text(leaving.Value.Value, DisplayKind.Temperature)} − {present.Text(entering.Value.Value, DisplayKind.Temperature)}",
                    present.Text(rise, DisplayKind.TemperatureDifference), "definition"),
                new TraceStep(
                    "q_V", "airflow by heat rise", present.Text(isElectric ? HeatRiseAirflow.ElectricFormula : HeatRiseAirflow.GasFormula),
                    string.Create(CultureInfo.InvariantCulture, $"{heatText}, 1.08·{density.Value:0.0000}, {present.Text(rise.Value, DisplayKind.TemperatureDifference)}"),
                    present.Text(value, DisplayKind.AirFlow), present.Text(HeatRiseAirflow.Source)),
            ],
        };
    }

    private AirflowRoute Traverse(Traverse traverse, ImmutableArray<Given<string>> with)
    {
        const string Words = "by a traverse of the duct";
        var present = _context.Present;
        var area = Written.Reading(_context, "duct area", traverse.Area, DisplayKind.Area);
        if (traverse.Velocities.IsEmpty)
            return None(AirflowMethod.Traverse, Words, "the velocities are not written", "Write the velocities of the traverse, one for each point.");
        var velocities = traverse.Velocities.Select((v, i) => _context.Readings.Plain(
            string.Create(CultureInfo.InvariantCulture, $"velocity {i + 1}"), ReadingName.AirVelocity, v, DisplayKind.Velocity, with)).ToImmutableArray();
        var n = velocities.Length;
        var mean = velocities.Select(v => v.Value).Aggregate((a, b) => a + b) / n;

        // The points of a traverse stand for their share of the area: their scatter says how well so few of them do.
        var scatter = n > 1 ? TypeA.Moments([.. velocities.Select(v => v.Value.Value)]).StandardDeviation / Math.Sqrt(n) : 0;
        if (scatter > 0)
            mean += _context.Scope.Reading(0, 1.0 * _context.Causes.Enter(new RootCause("traverse: scatter of the points", string.Create(CultureInfo.InvariantCulture, $"scatter of {n} points, s/√n"), scatter, n - 1), DisplayKind.Velocity));
        var value = mean * area.Value;
        return new AirflowRoute
        {
            Method = AirflowMethod.Traverse,
            Words = Words,
            Value = value,
            Reservation = n < 2 ? "one velocity is no traverse: the profile of the duct is not known" : null,
            Readings = [area, .. velocities],
            Steps =
            [
                new TraceStep("v_m", "mean velocity", "mean of the points", string.Join(", ", traverse.Velocities.Select(v => v.Text)), present.Text(mean, DisplayKind.Velocity), "definition"),
                new TraceStep("q_V", "airflow by traverse", "v_m · A", $"{present.Text(mean.Value, DisplayKind.Velocity)} · {traverse.Area.Text}", present.Text(value, DisplayKind.AirFlow), "definition"),
            ],
        };
    }

    private AirflowRoute Hood(Airflow written)
    {
        var readings = written.Hood.Select((v, i) => Flow(string.Create(CultureInfo.InvariantCulture, $"airflow at grille {i + 1}"), v, written.With)).ToImmutableArray();
        var value = readings.Select(r => r.Value).Aggregate((a, b) => a + b);
        return new AirflowRoute
        {
            Method = AirflowMethod.Hood,
            Words = "by hood at the grilles",
            Value = value,
            Readings = readings,
            Steps = [new TraceStep("q_V", "airflow at the grilles", "sum of the grilles", string.Join(" + ", written.Hood.Select(v => v.Text)), _context.Present.Text(value, DisplayKind.AirFlow), "definition")],
        };
    }

    private (CorrectedReading Entering, CorrectedReading Leaving) AirOf(HeatRise heat, ImmutableArray<Given<string>> with) => (
        _context.Readings.Temperature("return air of the heat-rise test", ReadingName.ReturnAir, heat.Return, null, with),
        _context.Readings.Temperature("supply air of the heat-rise test", ReadingName.SupplyAir, heat.Supply, null, with));

    private CorrectedReading Flow(string name, Given<VolumeFlow> given, ImmutableArray<Given<string>> with) => _context.Readings.Plain(name, ReadingName.Airflow, given, DisplayKind.AirFlow, with);

    private static AirflowRoute None(AirflowMethod method, string words, string why, Message todo) => new() { Method = method, Words = words, WhyNot = why, Todo = todo };
}
