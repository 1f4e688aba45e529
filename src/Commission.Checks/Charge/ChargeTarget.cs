using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>
/// What superheat or subcooling is compared with, in this order: the maker's chart, the maker's figure, and for the superheat of a fixed
/// orifice the California table. A dash of a chart or table ends there: no formula takes its place.
/// </summary>
internal sealed record ChargeTarget
{
    private ChargeTarget()
    {
    }

    /// <summary>The limit; null when nothing sets one here.</summary>
    public LimitStatement? Limit { get; private init; }

    /// <summary>The target with the doubt of the readings it depends on; null when it is a fixed figure or a range.</summary>
    public Uncertain? Target { get; private init; }

    /// <summary>Whether it is the maker's chart, which counts in every running state it was made for.</summary>
    public bool IsMakersChart { get; private init; }

    /// <summary>Why nothing sets a limit; null when something does.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>What would help; null when there is a limit.</summary>
    public Message? Todo { get; private init; }

    /// <summary>A remark on the limit, such as a maker's figure looser than common practice.</summary>
    public Message? Remark { get; private init; }

    /// <summary>The readings the target depends on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>How the target came about.</summary>
    public ImmutableArray<TraceStep> Steps { get; private init; } = [];

    /// <summary>The target for superheat.</summary>
    public static ChargeTarget Superheat(CheckContext context, ChargeRow row) =>
        FromChart(context, row, ChartQuantity.Superheat, LimitIds.ChargeSuperheatTolerance)
        ?? FromFigure(context, LimitIds.ChargeSuperheat, LimitIds.ChargeSuperheatTolerance)
        ?? (context.Get<ChargeAnalysis>() is { HasFixedMetering: true, IsRefrigeration: false } ? FromTable(context, row) : None(OperatingStateMessages.TargetNoSuperheat, OperatingStateMessages.TargetNoSuperheatNext));

    /// <summary>The target for subcooling.</summary>
    public static ChargeTarget Subcooling(CheckContext context, ChargeRow row) =>
        FromChart(context, row, ChartQuantity.Subcooling, LimitIds.ChargeSubcoolingTolerance)
        ?? FromFigure(context, LimitIds.ChargeSubcooling, LimitIds.ChargeSubcoolingTolerance)
        ?? None(OperatingStateMessages.TargetNoSubcooling, OperatingStateMessages.TargetNoSubcoolingNext);

    private static ChargeTarget None(Message why, Message todo) => new() { WhyNot = why, Todo = todo };

    private static ChargeTarget? FromChart(CheckContext context, ChargeRow row, ChartQuantity quantity, string toleranceId)
    {
        var chart = context.Job.Limits?.Charts.FirstOrDefault(c => c.For.Value == quantity && (c.Mode?.Value ?? OperatingMode.Cooling) == row.Mode);
        if (chart is null)
            return null;
        var readout = ChartReadout.Read(context, chart, row);
        if (readout.Value is not { } target)
            return None(readout.WhyNot!, OperatingStateMessages.TargetOutsideChartNext) with { IsMakersChart = true, Readings = readout.Readings };
        if (ChartTolerance(chart, context.Limits.Find(toleranceId)) is not { } tolerance)
            return null;
        return new ChargeTarget
        {
            Limit = context.State(tolerance, target.Value) with { Basis = "maker", Source = tolerance.Tier == LimitTier.Maker ? chart.From.Value : SourceOf(context, chart.From.Value, tolerance) },
            Target = target,
            IsMakersChart = true,
            Readings = readout.Readings,
            Steps = [readout.Step!],
        };
    }

    private static string SourceOf(CheckContext context, string source, Limit tolerance) =>
        context.Present.Text(OperatingStateMessages.TargetAndTolerance(new(source), new(tolerance.Source)));

    // The chart's own tolerance, else the one in force.
    private static Limit? ChartTolerance(MakerChart chart, Limit? usual)
    {
        if (usual is null || chart.Tolerance is not { Value.Dimension: Dimension.TemperatureDifference, Number: { } number } given)
            return usual;
        var half = new LimitFigure(number.Si, given.Text, number.Unit, number.Decimals);
        return usual with
        {
            Tier = LimitTier.Maker,
            Pack = "",
            Basis = "maker",
            Source = chart.From.Value,
            Mark = "job",
            Lower = half with { Si = -half.Si, Text = "-" + half.Text },
            Upper = half,
            LooserThan = null,
            SetAside = null,
        };
    }

    private static ChargeTarget? FromFigure(CheckContext context, string id, string toleranceId)
    {
        if (context.Limits.Find(id) is not { } limit)
            return null;
        var units = context.Present.Units;
        var tolerance = context.Limits.Find(toleranceId);
        if (limit.Lower is not null || limit.Upper is not null)
            return new ChargeTarget { Limit = context.State(limit), Remark = limit.Remark(units) ?? (limit.Target is null ? null : tolerance?.Remark(units)) };
        if (limit.Target is not { } target || tolerance is null)
            return null;
        return new ChargeTarget
        {
            Limit = context.State(tolerance, target.Si) with { Basis = LimitStatements.Word(limit.Tier), Source = SourceOf(context, limit.Source, tolerance) },
            Remark = tolerance.Remark(units),
        };
    }

    private static ChargeTarget FromTable(CheckContext context, ChargeRow row)
    {
        if (row.OutdoorDryBulb is not { } outdoor || row.ReturnWetBulb is not { } wet)
            return None(OperatingStateMessages.TargetAirNotRead, OperatingStateMessages.TargetAirNotReadNext);
        ImmutableArray<CorrectedReading> readings = [outdoor, wet];
        var present = context.Present;
        var table = CaliforniaSuperheatTable.At(Temperature.FromSi(outdoor.Value.Value), Temperature.FromSi(wet.Value.Value));
        if (!table.HasValue)
            return None(table.Why, table.Todo) with { Readings = readings };
        var rounding = context.Causes.Enter(
            RootCause.FromHalfWidth(OperatingStateMessages.TargetRounding, OperatingStateMessages.TargetRoundingSource, table.Rounding.Si), DisplayKind.TemperatureDifference);
        var target = Uncertain.WithPartials(table.Value.Si, (outdoor.Value, table.PerDryBulb), (wet.Value, table.PerWetBulb)) + context.Scope.Reading(0, 1.0 * rounding);
        var step = new TraceStep(
            "SH_target", present.Text(OperatingStateMessages.StepTarget), present.Text(OperatingStateMessages.StepTargetFormula),
            present.Text(OperatingStateMessages.StepTargetValues(
                present.InMessage(outdoor.Value.Value, DisplayKind.Temperature), present.InMessage(wet.Value.Value, DisplayKind.Temperature), new(table.PerDryBulb, 2), new(table.PerWetBulb, 2))),
            present.Text(target, DisplayKind.TemperatureDifference), present.Text(Cited.As(CaliforniaSuperheatTable.Source, CaliforniaSuperheatTable.Mark)));
        if (!double.IsFinite(target.StandardUncertainty))
            return None(OperatingStateMessages.TargetTableEnds, OperatingStateMessages.TargetTableEndsNext) with { Readings = readings };
        if (context.Limits.Find(LimitIds.ChargeSuperheatTargetMinimum) is { Lower: { } least } && table.Value.Si < least.Si)
        {
            return None(
                OperatingStateMessages.TargetTooLow(present.InMessage(table.Value.Si, DisplayKind.TemperatureDifference), present.InMessage(least.Si, DisplayKind.TemperatureDifference)),
                CaliforniaSuperheatTable.DashNext) with
            { Readings = readings, Steps = [step] };
        }

        var tolerance = context.Limits.Require(LimitIds.ChargeSuperheatTolerance);
        return new ChargeTarget
        {
            Limit = context.State(tolerance, table.Value.Si) with { Mark = CaliforniaSuperheatTable.Mark, Source = SourceOf(context, present.Text(Cited.As(CaliforniaSuperheatTable.Source, CaliforniaSuperheatTable.Mark)), tolerance) },
            Target = target,
            Remark = tolerance.Remark(present.Units),
            Readings = readings,
            Steps = [step],
        };
    }
}
