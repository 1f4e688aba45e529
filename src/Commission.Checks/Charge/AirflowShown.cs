using System.Collections.Immutable;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Checks.Tables;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>What shows that the airflow is enough to judge a charge by: a measured airflow for the capacity, else the temperature split.</summary>
internal sealed record AirflowShown
{
    private AirflowShown()
    {
    }

    /// <summary>The number judged: airflow for each capacity, or how far the split lies above its target.</summary>
    public required Uncertain Value { get; init; }

    /// <summary>What the number is.</summary>
    public required DisplayKind Kind { get; init; }

    /// <summary>The limit it is judged by.</summary>
    public required LimitStatement Limit { get; init; }

    /// <summary>Whether the number shows too little air.</summary>
    public bool IsLow => Value.Value < Limit.LowerSi || Value.Value > Limit.UpperSi;

    /// <summary>The number in words, for a reason.</summary>
    public required string Words { get; init; }

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
        var job = context.Job;
        if (job.Air?.Airflow is not { } written || job.Equipment.Capacity is not { } capacity || context.Limits.Find("air.airflow.minimum") is not { } minimum)
            return null;
        var parts = ImmutableArray.CreateBuilder<CorrectedReading>();
        if (written.Value is { } value)
        {
            parts.Add(context.Readings.Plain("airflow", ReadingName.Airflow, value, DisplayKind.AirFlow, written.With));
        }
        else
        {
            for (var i = 0; i < written.Hood.Length; i++)
                parts.Add(context.Readings.Plain(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"airflow at grille {i + 1}"), ReadingName.Airflow, written.Hood[i], DisplayKind.AirFlow, written.With));
        }

        if (parts.Count == 0)
            return null;
        var total = parts.Select(p => p.Value).Aggregate((a, b) => a + b);
        var per = total / capacity.Value.Si;
        var present = context.Present;
        return new AirflowShown
        {
            Value = per,
            Kind = DisplayKind.FlowPerCapacity,
            Limit = context.State(minimum),
            Words = $"the airflow of {present.Text(per.Value, DisplayKind.FlowPerCapacity)} is low",
            Readings = parts.ToImmutable(),
            Uses = [new ReadingUse("capacity", capacity.Text, capacity.At, null)],
            Steps =
            [
                new TraceStep(
                    "V̇/Q", "airflow for each capacity", "V̇ / Q_rated",
                    $"{present.Text(total.Value, DisplayKind.AirFlow)} / {capacity.Text}", present.Text(per, DisplayKind.FlowPerCapacity), "definition"),
            ],
        };
    }

    // A split above its target means that each pound of air gives up more heat than it should: there is too little air.
    private static AirflowShown? Split(CheckContext context, ChargeRow row)
    {
        if (row.Mode != OperatingMode.Cooling || row.ReturnDryBulb is not { } entering || row.SupplyDryBulb is not { } leaving)
            return null;
        if (context.Limits.Find("air.temperature-split.tolerance") is not { Upper: not null } tolerance)
            return null;
        var split = entering.Value - leaving.Value;
        var maker = context.Limits.Find("air.temperature-split");
        Uncertain target;
        string source;
        var readings = ImmutableArray.Create(entering, leaving);
        if (maker?.Target is { } figure)
        {
            target = Uncertain.Exact(figure.Si);
            source = maker.Source;
        }
        else if (row.ReturnWetBulb is { } wet && CaliforniaSplitTable.At(Temperature.FromSi(entering.Value.Value), Temperature.FromSi(wet.Value.Value)) is { HasValue: true } table)
        {
            target = Uncertain.WithPartials(table.Value.Si, (entering.Value, table.PerDryBulb), (wet.Value, table.PerWetBulb));
            source = $"{CaliforniaSplitTable.Source} ({CaliforniaSplitTable.Mark})";
            readings = readings.Add(wet);
        }
        else
        {
            return null;
        }

        var over = split - target;
        var present = context.Present;
        var most = context.State(tolerance).Text.TrimStart('±', ' ');
        return new AirflowShown
        {
            Value = over,
            Kind = DisplayKind.TemperatureDifference,
            Limit = context.State(tolerance) with { Kind = LimitKind.AtMost, Text = $"at most {most} above the target split", LowerSi = null },
            Words = $"the temperature split lies {present.Text(over.Value, DisplayKind.TemperatureDifference)} above its target, which means low airflow",
            Readings = readings,
            Steps =
            [
                new TraceStep(
                    "ΔT_target", "target temperature split", "table at return dry and wet bulb, or the maker's figure",
                    present.Text(entering.Value.Value, DisplayKind.Temperature) + (readings.Length > 2 ? $", {present.Text(readings[2].Value.Value, DisplayKind.Temperature)} wet bulb" : ""),
                    present.Text(target, DisplayKind.TemperatureDifference), source),
                new TraceStep(
                    "ΔT − ΔT_target", "temperature split over its target", "T_return − T_supply − ΔT_target",
                    $"{present.Text(split.Value, DisplayKind.TemperatureDifference, 2)} − {present.Text(target.Value, DisplayKind.TemperatureDifference, 2)}",
                    present.Text(over, DisplayKind.TemperatureDifference), "definition"),
            ],
        };
    }
}
