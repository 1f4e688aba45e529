using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
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
    public Message? WhyNot { get; private init; }

    /// <summary>What would help; null when there is a limit.</summary>
    public Message? Todo { get; private init; }

    /// <summary>A remark on the limit.</summary>
    public Message? Remark { get; private init; }

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
                    Limit = context.State(tolerance, figure.Si) with { Basis = LimitStatements.Word(maker.Tier), Source = context.Present.Text(AirMessages.SplitSource(new(maker.Source), new(tolerance.Source))) },
                    Remark = remark,
                };
            }
        }

        return FromTable(context, row, tolerance) with { Remark = remark };
    }

    private static SplitTarget FromTable(CheckContext context, ChargeRow row, Limit? tolerance)
    {
        if (row.ReturnDryBulb is not { } dry || row.ReturnWetBulb is not { } wet)
            return None(AirMessages.SplitTableNoWetBulb, AirMessages.SplitTableNoWetBulbNext);
        ImmutableArray<CorrectedReading> readings = [wet];
        var present = context.Present;
        var table = CaliforniaSplitTable.At(Temperature.FromSi(dry.Value.Value), Temperature.FromSi(wet.Value.Value));
        if (!table.HasValue)
            return None(table.Why, table.Todo) with { Readings = readings };

        if (tolerance is null)
            return None(AirMessages.SplitNoTolerance, CommonMessages.NameAPackNext) with { Readings = readings };
        var rounding = context.Causes.Enter(
            RootCause.FromHalfWidth(AirMessages.SplitTableRounding, AirMessages.SplitTableRoundingSource, table.Rounding.Si), DisplayKind.TemperatureDifference);
        var target = Uncertain.WithPartials(table.Value.Si, (dry.Value, table.PerDryBulb), (wet.Value, table.PerWetBulb)) + context.Scope.Reading(0, 1.0 * rounding);
        return new SplitTarget
        {
            Limit = context.State(tolerance, table.Value.Si) with { Mark = CaliforniaSplitTable.Mark, Source = present.Text(AirMessages.SplitTableSources(TableSource, Cited.As(tolerance.Source, tolerance.Mark))) },
            Target = target,
            IsTable = true,
            Readings = readings,
            Steps =
            [
                new TraceStep(
                    "ΔT_target", present.Text(AirMessages.SplitTarget), present.Text(AirMessages.SplitTargetFormula),
                    present.Text(AirMessages.SplitTargetNumbers(present.InMessage(dry.Value.Value, DisplayKind.Temperature), present.InMessage(wet.Value.Value, DisplayKind.Temperature), new(table.PerDryBulb, 2), new(table.PerWetBulb, 2))),
                    present.Text(target, DisplayKind.TemperatureDifference), present.Text(TableSource)),
            ],
        };
    }

    private static Message TableSource => Cited.As(CaliforniaSplitTable.Source, CaliforniaSplitTable.Mark);

    private static SplitTarget None(Message why, Message todo) => new() { WhyNot = why, Todo = todo };
}
