using System.Collections.Immutable;
using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Air before charge: enough airflow, clean filter and coil, panels on, blower at cooling speed.</summary>
internal sealed class PrerequisitesCheck : ICheck
{
    public string Id => "charge.prerequisites";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Charging is null || analysis.ByWeightOnly is not null)
            yield break;
        var row = analysis.Spoken(OperatingMode.Cooling, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null }) ?? analysis.Spoken(OperatingMode.Cooling, _ => true);
        if (ChargePrerequisites.Of(context, row) is not { } gate)
            yield break;
        var finding = context.Finding(this, row?.Time);
        gate.NameIn(finding);
        if (gate.Airflow is { } airflow)
        {
            foreach (var reading in airflow.Readings)
                finding.Use(reading);
            finding.Add(airflow.Steps).Judge(airflow.Value, airflow.Kind, airflow.Limit, airflow.Target);
        }
        else if (gate.All.All(p => p.Shown is null))
        {
            yield return finding.NotEvaluated(
                row?.Written is { ReturnDryBulb: null, SupplyDryBulb: null } or null ? ChargeMessages.PrerequisitesNothing : ChargeMessages.PrerequisitesTemperaturesOnly, ChargeMessages.PrerequisitesNext);
            yield break;
        }
        else
        {
            finding.Decide(true);
        }

        if (gate.Block is { } low)
        {
            yield return finding.Fail(low).Say(ChargeMessages.ChargeNotJudged(low)).Next(gate.Todo!).Build();
            yield break;
        }

        if (gate.Reservation is { } missing)
            finding.Reserve(missing);
        if (ChargeFindings.Unknown(gate.Airflow?.Readings ?? []) is { } unknown)
            finding.Reserve(unknown);
        yield return finding.Say(Sentence(context, gate)).Build();
    }

    private static Message Sentence(CheckContext context, ChargePrerequisites gate)
    {
        var parts = new List<MessageValue>();
        if (gate.Airflow is { } airflow)
        {
            var value = context.Present.InMessage(airflow.Value, airflow.Kind);
            parts.Add(airflow.Kind == DisplayKind.TemperatureDifference ? ChargeMessages.AirSideSplit(value, new(airflow.Limit.Text)) : ChargeMessages.AirSideAirflow(value, new(airflow.Limit.Text)));
        }
        else if (gate.NeedsAirflow)
        {
            parts.Add(ChargeMessages.AirSideAirflowOpen);
        }

        parts.Add(gate.Reservation ?? ChargeMessages.AirSideAllWell);
        return ChargeMessages.AirSide(new([.. parts], ListJoin.Semicolons));
    }
}

/// <summary>One thing that comes before charge, and whether the job shows it.</summary>
/// <param name="What">What it is, as a clause: the filter is clean.</param>
/// <param name="Shown">True when shown, false when shown not to be so, null when not written.</param>
/// <param name="Otherwise">What the job shows instead; null when it shows nothing.</param>
internal sealed record Prerequisite(Message What, bool? Shown, Message? Otherwise = null);

/// <summary>
/// Air before charge: a charge set on low airflow is a wrong charge. Airflow counts as shown by a measurement or by the temperature
/// split; filter, coil, panels and blower speed by the job's own words.
/// </summary>
internal sealed class ChargePrerequisites : IChargeGate
{
    private readonly AirSide? _air;
    private readonly ImmutableArray<CorrectedReading> _readings;
    private readonly ImmutableArray<Records.Findings.ReadingUse> _uses;

    private ChargePrerequisites(AirSide? air, AirflowShown? airflow, ImmutableArray<Prerequisite> all, ImmutableArray<CorrectedReading> readings, ImmutableArray<Records.Findings.ReadingUse> uses)
    {
        _air = air;
        _readings = readings;
        _uses = uses;
        Airflow = airflow;
        All = all;
    }

    /// <summary>The airflow with its limit; null when the job does not show it.</summary>
    public AirflowShown? Airflow { get; }

    /// <summary>Steady running and the running condition, on which it depends whether a temperature split counts.</summary>
    private ChargeGates? SplitCounts { get; init; }

    /// <summary>Whether the air runs through ducts, so that its flow has to be shown.</summary>
    public bool NeedsAirflow { get; private init; }

    /// <summary>Everything asked for.</summary>
    public ImmutableArray<Prerequisite> All { get; }

    /// <inheritdoc/>
    public Message? Block => All.Any(p => p.Shown == false) ? ChargeMessages.AirBeforeCharge(new([.. All.Where(p => p.Shown == false).Select(p => p.Otherwise!)], ListJoin.Comma)) : null;

    /// <inheritdoc/>
    public Message? Todo => Block is null ? null : ChargeMessages.AirBeforeChargeNext;

    /// <inheritdoc/>
    public Message? Reservation
    {
        get
        {
            var missing = All.Where(p => p.Shown is null).Select(p => p.What).ToArray();
            Message?[] open = [missing.Length == 0 ? null : ChargeMessages.AirNotShown(new([.. missing])), Airflow?.Reservation];
            var all = open.OfType<Message>().ToArray();
            return all.Length switch
            {
                0 => null,
                1 => all[0],
                _ => CommonMessages.Several(new([.. all], ListJoin.Semicolons)),
            };
        }
    }

    /// <summary>Looks at the air side of a job whose charge is judged by readings.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">The readings; null when there are none in cooling.</param>
    /// <returns>What is shown; null for a cold room, where air has other measures, and where water takes its place.</returns>
    public static ChargePrerequisites? Of(CheckContext context, ChargeRow? row)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.IsRefrigeration || analysis.HasWaterSide)
            return null;
        var equipment = context.Job.Equipment;
        var side = context.Job.Air;
        var ducted = equipment.Ducted?.Value ?? equipment.System.Value is SystemKind.Split or SystemKind.HeatPump or SystemKind.Packaged;
        var all = ImmutableArray.CreateBuilder<Prerequisite>();
        var parts = ImmutableArray.CreateBuilder<CorrectedReading>();
        AirflowShown? airflow = null;
        var facts = ImmutableArray<Records.Findings.ReadingUse>.Empty;
        if (ducted)
        {
            airflow = AirflowShown.Of(context, row);
            if (airflow is not null)
            {
                parts.AddRange(airflow.Readings);
                facts = airflow.Uses;
            }

            all.Add(new Prerequisite(ChargeMessages.AirAirflowEnough, airflow is null ? null : !airflow.IsLow, airflow?.Words));
        }

        all.Add(Clean(ChargeMessages.AirFilterClean, side?.Filter, ChargeMessages.AirFilterDirty));
        all.Add(Clean(ChargeMessages.AirCoilClean, side?.Coil, ChargeMessages.AirCoilDirty));
        all.Add(new Prerequisite(ChargeMessages.AirPanelsOn, side?.PanelsOn?.Value, ChargeMessages.AirPanelOff));
        all.Add(new Prerequisite(ChargeMessages.AirBlowerCooling, side?.BlowerAtCoolingSpeed?.Value ?? (airflow is { IsLow: false } ? true : null), ChargeMessages.AirBlowerOther));
        return new ChargePrerequisites(side, airflow, all.ToImmutable(), parts.ToImmutable(), facts)
        {
            NeedsAirflow = ducted,
            SplitCounts = ducted && row is not null ? new ChargeGates(row.Settling, RunningCondition.Of(context, row)) : null,
        };
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        finding
            .Use(DiagnosisMessages.ReadingFilter, _air?.Filter)
            .Use(DiagnosisMessages.ReadingIndoorCoil, _air?.Coil)
            .Use(ChargeMessages.AirReadingPanels, _air?.PanelsOn)
            .Use(ChargeMessages.AirReadingBlower, _air?.BlowerAtCoolingSpeed);
        SplitCounts?.NameIn(finding);
        foreach (var use in _readings.SelectMany(r => r.Uses).Concat(_uses))
            finding.Use(use);
    }

    private static Prerequisite Clean(Message what, Given<Cleanliness>? seen, Message otherwise) => new(
        what,
        seen?.Value switch
        {
            Cleanliness.Clean or Cleanliness.New or Cleanliness.None => true,
            Cleanliness.Dirty => false,
            _ => null,
        },
        otherwise);
}

/// <summary>
/// What shows that the airflow is enough to judge a charge by: a measured airflow against the maker's least or the least for its capacity,
/// else the temperature split of a settled reading.
/// </summary>
internal sealed record AirflowShown
{
    private AirflowShown()
    {
    }

    /// <summary>The number judged: airflow, airflow for each capacity, or temperature split.</summary>
    public required Uncertain Value { get; init; }

    /// <summary>The target where it moves with readings of its own.</summary>
    public Uncertain? Target { get; init; }

    /// <summary>What the number is.</summary>
    public required DisplayKind Kind { get; init; }

    /// <summary>The limit it is judged by; one-sided, because too much air does not stand in the way of a charge.</summary>
    public required LimitStatement Limit { get; init; }

    /// <summary>Whether the number shows too little air.</summary>
    public bool IsLow => Value.Value < Limit.LowerSi || Value.Value > Limit.UpperSi;

    /// <summary>Too little air in words, for a reason.</summary>
    public required Message Words { get; init; }

    /// <summary>What makes it less than sure, without a full stop; null when nothing does.</summary>
    public Message? Reservation { get; init; }

    /// <summary>The readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; init; } = [];

    /// <summary>What else of the job it rests on.</summary>
    public ImmutableArray<ReadingUse> Uses { get; init; } = [];

    /// <summary>How it came about.</summary>
    public ImmutableArray<TraceStep> Steps { get; init; } = [];

    /// <summary>What the job shows.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">The readings; null when there are none in cooling.</param>
    /// <returns>The best evidence there is; null when there is none.</returns>
    public static AirflowShown? Of(CheckContext context, ChargeRow? row) => Measured(context) ?? (row is null ? null : Split(context, row));

    private static AirflowShown? Measured(CheckContext context)
    {
        if (context.Get<AirflowRoutes>().Chosen is not { Value: { } flow } route)
            return null;
        var present = context.Present;
        if (context.Limits.Find(LimitIds.AirAirflow) is { Lower: { } least } maker)
        {
            return new AirflowShown
            {
                Value = flow,
                Kind = DisplayKind.AirFlow,
                Limit = context.State(maker) with { Kind = LimitKind.AtLeast, Text = present.Text(CommonMessages.LimitAtLeast(present.InMessage(least.Si, DisplayKind.AirFlow))), UpperSi = null, TargetSi = null },
                Words = ChargeMessages.AirflowLow(present.InMessage(flow.Value, DisplayKind.AirFlow)),
                Reservation = route.Reservation,
                Readings = route.Readings,
                Uses = route.Uses,
                Steps = route.Steps,
            };
        }

        if (context.Job.Equipment.Capacity is not { } capacity || context.Limits.Find(LimitIds.AirAirflowMinimum) is not { } minimum)
            return null;
        var per = flow / capacity.Value.Si;
        return new AirflowShown
        {
            Value = per,
            Kind = DisplayKind.FlowPerCapacity,
            Limit = context.State(minimum),
            Words = ChargeMessages.AirflowLow(present.InMessage(per.Value, DisplayKind.FlowPerCapacity)),
            Reservation = route.Reservation,
            Readings = route.Readings,
            Uses = [.. route.Uses, capacity.Use(present.Text(ReadingsMessages.Capacity))],
            Steps =
            [
                .. route.Steps,
                new TraceStep(
                    "q_V/Q", present.Text(AirMessages.AirflowPerCapacity), "q_V / Q_rated",
                    $"{present.Text(flow.Value, DisplayKind.AirFlow)} / {capacity.Text}", present.Text(per, DisplayKind.FlowPerCapacity), present.Text(CircuitMessages.Definition)),
            ],
        };
    }

    // A split above its target means that each pound of air gives up more heat than it should: there is too little air.
    private static AirflowShown? Split(CheckContext context, ChargeRow row)
    {
        if (row.Mode != OperatingMode.Cooling || row.Settling.Block is not null || row.ReturnDryBulb is not { } entering || row.SupplyDryBulb is not { } leaving)
            return null;
        var target = SplitTarget.Of(context, row);
        var present = context.Present;
        var split = entering.Value - leaving.Value;
        // Where the table cannot be entered, for want of a wet bulb or beyond its edge, a split that is rarely exceeded still shows that air moves.
        if (target.Limit is null && context.Limits.Find(LimitIds.AirTemperatureSplitUsual) is { } usual)
        {
            return new AirflowShown
            {
                Value = split,
                Kind = DisplayKind.TemperatureDifference,
                Limit = context.State(usual),
                Words = ChargeMessages.SplitUnusual(present.InMessage(split.Value, DisplayKind.TemperatureDifference)),
                Readings = [entering, leaving],
            };
        }

        if (target.Limit is not { UpperSi: { } upper } limit || (target.IsTable && RunningCondition.Of(context, row).Block is not null))
            return null;
        return new AirflowShown
        {
            Value = split,
            Target = target.Target,
            Kind = DisplayKind.TemperatureDifference,
            Limit = limit with { Kind = LimitKind.AtMost, Text = present.Text(ChargeMessages.AtMostOf(present.InMessage(upper, DisplayKind.TemperatureDifference), new(limit.Text))), LowerSi = null },
            Words = ChargeMessages.SplitHigh(present.InMessage(split.Value, DisplayKind.TemperatureDifference), new(limit.Text)),
            Readings = [entering, leaving, .. target.Readings],
            Steps =
            [
                .. target.Steps,
                new TraceStep(
                    "ΔT", present.Text(AirMessages.SplitName), "T_return − T_supply",
                    $"{present.Text(entering.Value.Value, DisplayKind.Temperature, 2)} − {present.Text(leaving.Value.Value, DisplayKind.Temperature, 2)}",
                    present.Text(split, DisplayKind.TemperatureDifference), present.Text(CircuitMessages.Definition)),
            ],
        };
    }
}
