using System.Collections.Immutable;
using Commission.Checks.Air;
using Commission.Checks.Readings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

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

    /// <summary>What the number is.</summary>
    public required DisplayKind Kind { get; init; }

    /// <summary>The limit it is judged by; one-sided, because too much air does not stand in the way of a charge.</summary>
    public required LimitStatement Limit { get; init; }

    /// <summary>Whether the number shows too little air.</summary>
    public bool IsLow => Value.Value < Limit.LowerSi || Value.Value > Limit.UpperSi;

    /// <summary>Too little air in words, for a reason.</summary>
    public required string Words { get; init; }

    /// <summary>What makes it less than sure, without a full stop; null when nothing does.</summary>
    public string? Reservation { get; init; }

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
        if (context.Limits.Find("air.airflow") is { Lower: { } least } maker)
        {
            return new AirflowShown
            {
                Value = flow,
                Kind = DisplayKind.AirFlow,
                Limit = context.State(maker) with { Kind = LimitKind.AtLeast, Text = $"at least {present.Text(least.Si, DisplayKind.AirFlow)}", UpperSi = null, TargetSi = null },
                Words = $"the airflow of {present.Text(flow.Value, DisplayKind.AirFlow)} is low",
                Reservation = route.Reservation,
                Readings = route.Readings,
                Uses = route.Uses,
                Steps = route.Steps,
            };
        }

        if (context.Job.Equipment.Capacity is not { } capacity || context.Limits.Find("air.airflow.minimum") is not { } minimum)
            return null;
        var per = flow / capacity.Value.Si;
        return new AirflowShown
        {
            Value = per,
            Kind = DisplayKind.FlowPerCapacity,
            Limit = context.State(minimum),
            Words = $"the airflow of {present.Text(per.Value, DisplayKind.FlowPerCapacity)} is low",
            Reservation = route.Reservation,
            Readings = route.Readings,
            Uses = [.. route.Uses, new ReadingUse("capacity", capacity.Text, capacity.At, null)],
            Steps =
            [
                .. route.Steps,
                new TraceStep(
                    "V̇/Q", "airflow for each capacity", "V̇ / Q_rated",
                    $"{present.Text(flow.Value, DisplayKind.AirFlow)} / {capacity.Text}", present.Text(per, DisplayKind.FlowPerCapacity), "definition"),
            ],
        };
    }

    // A split above its target means that each pound of air gives up more heat than it should: there is too little air.
    private static AirflowShown? Split(CheckContext context, ChargeRow row)
    {
        if (row.Mode != OperatingMode.Cooling || row.Settling.Block is not null || row.ReturnDryBulb is not { } entering || row.SupplyDryBulb is not { } leaving)
            return null;
        var target = SplitTarget.Of(context, row);
        if (target.Limit is not { UpperSi: { } upper } limit || (target.IsTable && RunningCondition.Of(context, row).Block is not null))
            return null;
        var present = context.Present;
        var split = entering.Value - leaving.Value;
        var judged = target.Target is { } moving ? split - (moving - moving.Value) : split;
        return new AirflowShown
        {
            Value = judged,
            Kind = DisplayKind.TemperatureDifference,
            Limit = limit with { Kind = LimitKind.AtMost, Text = $"at most {present.Text(upper, DisplayKind.TemperatureDifference)} ({limit.Text})", LowerSi = null },
            Words = $"the temperature split of {present.Text(split.Value, DisplayKind.TemperatureDifference)} is above {limit.Text}, which means low airflow",
            Readings = [entering, leaving, .. target.Readings],
            Steps =
            [
                .. target.Steps,
                new TraceStep(
                    "ΔT", "temperature split", "T_return − T_supply",
                    $"{present.Text(entering.Value.Value, DisplayKind.Temperature, 2)} − {present.Text(leaving.Value.Value, DisplayKind.Temperature, 2)}",
                    present.Text(judged, DisplayKind.TemperatureDifference), "definition"),
            ],
        };
    }
}
