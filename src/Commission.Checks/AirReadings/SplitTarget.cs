using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.AirReadings;

/// <summary>What a temperature split is compared with: the maker's range or target, else the California table at return dry and wet bulb.</summary>
internal sealed record SplitTarget
{
    private SplitTarget()
    {
    }

    /// <summary>The limit; null when nothing sets one here.</summary>
    public LimitStatement? Limit { get; private init; }

    /// <summary>The target with the doubt of the readings it was taken from; null for a fixed range.</summary>
    public Uncertain? Target { get; private init; }

    /// <summary>Whether it comes from the table, for which the system has to run as it is rated.</summary>
    public bool IsTable { get; private init; }

    /// <summary>Why nothing sets a limit, without a full stop; null when something does.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>What would help; null when there is a limit.</summary>
    public string? Todo { get; private init; }

    /// <summary>A remark on the limit.</summary>
    public string? Remark { get; private init; }

    /// <summary>Readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>How it came about.</summary>
    public ImmutableArray<TraceStep> Steps { get; private init; } = [];

    /// <summary>The target of a row.</summary>
    public static SplitTarget Of(CheckContext context, ChargeRow row)
    {
        var tolerance = context.Limits.Find(LimitIds.AirTemperatureSplitTolerance);
        var remark = tolerance?.Remark(context.Present.Units);
        if (context.Limits.Find(LimitIds.AirTemperatureSplit) is { } maker)
        {
            if (maker.Lower is not null || maker.Upper is not null)
                return new SplitTarget { Limit = context.State(maker), Remark = maker.Remark(context.Present.Units) ?? (maker.Target is null ? null : remark) };
            if (maker.Target is { } figure && tolerance is not null)
            {
                return new SplitTarget
                {
                    Limit = context.State(tolerance, figure.Si) with { Basis = LimitStatements.Word(maker.Tier), Source = $"{maker.Source}; tolerance: {tolerance.Source}" },
                    Remark = remark,
                };
            }
        }

        return FromTable(context, row, tolerance) with { Remark = remark };
    }

    private static SplitTarget FromTable(CheckContext context, ChargeRow row, Limit? tolerance)
    {
        if (row.ReturnDryBulb is not { } dry || row.ReturnWetBulb is not { } wet)
            return None("the table of target splits is entered with the return wet bulb, which was not read", "Read the wet bulb of the return air, or measure the airflow.");
        ImmutableArray<CorrectedReading> readings = [wet];
        var present = context.Present;
        var table = CaliforniaSplitTable.At(Temperature.FromSi(dry.Value.Value), Temperature.FromSi(wet.Value.Value));
        if (!table.HasValue)
            return None(present.Text(table.Why), present.Text(table.Todo)) with { Readings = readings };

        if (tolerance is null)
            return None("no pack sets a tolerance for the split", "Name a limits pack.") with { Readings = readings };
        var rounding = context.Causes.Enter(
            RootCause.FromHalfWidth("table of target splits: rounding", "half of its last printed digit", table.Rounding.Si), DisplayKind.TemperatureDifference);
        var target = Uncertain.WithPartials(table.Value.Si, (dry.Value, table.PerDryBulb), (wet.Value, table.PerWetBulb)) + context.Scope.Reading(0, 1.0 * rounding);
        return new SplitTarget
        {
            Limit = context.State(tolerance, table.Value.Si) with { Mark = CaliforniaSplitTable.Mark, Source = $"{CaliforniaSplitTable.Source} ({CaliforniaSplitTable.Mark}); tolerance: {tolerance.Source} ({tolerance.Mark})" },
            Target = target,
            IsTable = true,
            Readings = readings,
            Steps =
            [
                new TraceStep(
                    "ΔT_target", "target temperature split", "table at return dry and wet bulb, linear between whole degrees",
                    FormattableString.Invariant($"{present.Text(dry.Value.Value, DisplayKind.Temperature)}, {present.Text(wet.Value.Value, DisplayKind.Temperature)} wet bulb; ∂/∂DB = {table.PerDryBulb:0.00}, ∂/∂WB = {table.PerWetBulb:0.00}"),
                    present.Text(target, DisplayKind.TemperatureDifference), $"{CaliforniaSplitTable.Source} ({CaliforniaSplitTable.Mark})"),
            ],
        };
    }

    private static SplitTarget None(string why, string todo) => new() { WhyNot = why, Todo = todo };
}
