using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Interpolation;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Pressures and line temperatures the maker states, as figures or as charts.</summary>
internal sealed class MakerChartCheck : ICheck
{
    public string Id => "charge.maker-chart";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Heating, r => r.HasCircuitReading) is { } heating)
        {
            foreach (var chart in (context.Job.Limits?.Charts ?? []).Where(c => c.Mode?.Value == OperatingMode.Heating && c.For.Value != ChartQuantity.TemperatureSplit))
                yield return ChartJudgement.Judge(context, this, chart, heating, new ChargeGates(heating.Settling, HeatingGate.Of(context, heating.Written)));
        }

        if (analysis.Spoken(OperatingMode.Cooling, _ => true) is not { } row)
            yield break;
        foreach (var chart in context.Job.Limits?.Charts ?? [])
        {
            if ((chart.Mode?.Value ?? OperatingMode.Cooling) != OperatingMode.Cooling || chart.For.Value is ChartQuantity.Superheat or ChartQuantity.Subcooling or ChartQuantity.TemperatureSplit)
                continue;
            yield return ChartJudgement.Judge(
                context, this, chart, row, new ChargeGates(row.Settling, LogDrift.Of(context), MethodValidity.Of(context, row, ChargeCriterion.Subcooling, makersChart: true), ChargePrerequisites.Of(context, row)));
        }

        if (context.Limits.Find(LimitIds.ChargeVaporPressure) is { } vapor && row.VaporPressure is { } low)
            yield return Judge(context, row, ReadingsMessages.VaporPressure, low, vapor);
        if (context.Limits.Find(LimitIds.ChargeLiquidPressure) is { } liquid && row.LiquidPressure is { } high)
            yield return Judge(context, row, ReadingsMessages.LiquidPressure, high, liquid);
        foreach (var figure in Transcritical(context, row))
            yield return new ChargeGates(row.Settling).Blocked is var (why, todo) ? context.Finding(this, figure.Subject).Use(figure.Reading).NotEvaluated(why, todo) : figure.Judge(context, this, ChargeMessages.GasCoolerNext);
    }

    // Above its critical point carbon dioxide has no saturation to hold a charge against: what the controller's maker asks for is all there is.
    private static IEnumerable<FigureOfMaker> Transcritical(CheckContext context, ChargeRow row)
    {
        var written = row.Written;
        string Named(Message reading) => context.Present.Text(ReadingsMessages.AtTime(reading, new(row.Time)));
        if (written.GasCoolerPressure is { } cooler)
            yield return new(Named(ChargeMessages.GasCoolerPressure), context.Readings.Pressure(Named(ChargeMessages.GasCoolerPressure), ReadingName.LiquidPressure, cooler), DisplayKind.Pressure, LimitIds.ChargeGasCoolerPressure);
        if (written.GasCoolerOutlet is { } outlet)
            yield return new(Named(ChargeMessages.GasCoolerOutlet), context.Readings.Temperature(Named(ChargeMessages.GasCoolerOutlet), ReadingName.LiquidLine, outlet), DisplayKind.Temperature, LimitIds.ChargeGasCoolerOutlet);
        if (written.ReceiverPressure is { } receiver)
            yield return new(Named(ChargeMessages.ReceiverPressure), context.Readings.Pressure(Named(ChargeMessages.ReceiverPressure), ReadingName.LiquidPressure, receiver), DisplayKind.Pressure, LimitIds.ChargeReceiverPressure);
    }

    private Finding Judge(CheckContext context, ChargeRow row, Message what, CorrectedReading pressure, Limit limit)
    {
        // Stated as the maker states it: above the atmosphere or absolute.
        var isGauge = (limit.Target ?? limit.Lower ?? limit.Upper)?.Reference == PressureReference.Gauge;
        var (y, kind) = isGauge ? (pressure.Value - context.Get<SiteAtmosphere>().Value, DisplayKind.Pressure) : (pressure.Value, DisplayKind.AbsolutePressure);
        var finding = context.Finding(this, ReadingsMessages.AtTime(what, new(row.Time))).Use(pressure).Measure(y, kind);
        var gates = new ChargeGates(
            row.Settling, LogDrift.Of(context), RunningCondition.Of(context, row), MethodValidity.Of(context, row, ChargeCriterion.Subcooling), ChargePrerequisites.Of(context, row));
        gates.NameIn(finding);
        var (was, time) = (context.Present.InMessage(y, kind), new TextValue(row.Time));
        if (gates.Blocked is var (why, todo))
            return finding.Say(ChargeMessages.FigureNotJudged(what, was, time, why)).NotEvaluated(why, todo);
        var state = limit.ToStatement(context.Present);
        return state is { LowerSi: null, UpperSi: null }
            ? finding.Show(state).Information(ChargeMessages.FigureBeside(what, was, time, new(state.Text)), ChargeMessages.FigureNoTolerance)
            : finding.JudgeCharge(context, new(y, kind, [pressure]), state, gates, ChargeMessages.FigureAsked(what, was, time, new(state.Text)), ChargeMessages.FigureNext);
    }
}

/// <summary>Judges a reading by a chart of the maker that gives it directly: a pressure or a line temperature.</summary>
internal static class ChartJudgement
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="chart">The chart.</param>
    /// <param name="row">The readings.</param>
    /// <param name="gates">What the judgement rests on besides.</param>
    public static Finding Judge(CheckContext context, ICheck check, MakerChart chart, ChargeRow row, ChargeGates gates)
    {
        var what = SchemaWords.Of(chart.For.Value);
        var finding = context.Finding(check, ReadingsMessages.AtTime(what, new(row.Time)));
        var readout = ChartReadout.Read(context, chart, row);
        foreach (var reading in readout.Readings)
            finding.Use(reading);
        if (Read(chart.For.Value, row) is not { } judged)
            return finding.NotEvaluated(CircuitMessages.NotRead(new([what]), 1), ChargeMessages.ChartNotReadNext);
        finding.Use(judged);
        var kind = ChartReadout.KindOf(chart.For.Value);
        // Pressures of a chart are those a gauge shows.
        var y = kind == DisplayKind.Pressure ? judged.Value - context.Get<SiteAtmosphere>().Value : judged.Value;
        finding.Measure(y, kind);
        gates.NameIn(finding);
        var (was, time) = (context.Present.InMessage(y, kind), new TextValue(row.Time));
        if (gates.Blocked is var (why, todo))
            return finding.Say(ChargeMessages.FigureNotJudged(what, was, time, why)).NotEvaluated(why, todo);
        if (readout.Value is not { } target)
            return finding.NotEvaluated(readout.WhyNot!, OperatingStateMessages.TargetOutsideChartNext);
        finding.Step(readout.Step!);
        var figure = context.Present.InMessage(target.Value, kind);
        if (chart.Tolerance is not { } tolerance)
            return finding.Information(ChargeMessages.ChartSays(what, was, time, figure), ChargeMessages.ChartNoTolerance);
        var half = tolerance.Value.Si;
        var limit = new LimitStatement(
            LimitKind.Target, $"{context.Present.Text(figure)} ± {tolerance.Text}", target.Value - half, target.Value + half, target.Value, LimitStatements.Word(LimitTier.Maker), "", chart.From.Value, "job", RuleOf(context))
        { Quantity = context.Present.Text(what) };
        return finding.JudgeCharge(
            context, new(y, kind, [judged, .. readout.Readings]) { Target = target }, limit, gates,
            ChargeMessages.ChartSaysWithin(what, was, time, figure, new(tolerance.Text)),
            ChargeMessages.ChartNext);
    }

    private static CorrectedReading? Read(ChartQuantity quantity, ChargeRow row) => quantity switch
    {
        ChartQuantity.VaporPressure => row.VaporPressure,
        ChartQuantity.LiquidPressure => row.LiquidPressure,
        ChartQuantity.DischargePressure => row.DischargePressure,
        ChartQuantity.DischargeLine => row.DischargeLine,
        ChartQuantity.VaporLine => row.VaporLine,
        ChartQuantity.LiquidLine => row.LiquidLine,
        _ => null,
    };

    // A chart has no rule of its own: it takes that of the charge's tolerances, which a job may ask to be guarded.
    private static Measurement.Decisions.DecisionRule RuleOf(CheckContext context) =>
        context.Limits.Find(LimitIds.ChargeSubcoolingTolerance)?.Rule ?? Measurement.Decisions.DecisionRule.Simple;
}

/// <summary>What a maker's chart says at a row of readings: bilinear between its places, nothing beyond them, nothing where it is blank.</summary>
internal sealed record ChartReadout
{
    private ChartReadout()
    {
    }

    /// <summary>The figure, SI, with the doubt of the readings it was entered with; null when the chart says nothing.</summary>
    public Uncertain? Value { get; private init; }

    /// <summary>Why it says nothing; null when it says something.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>The readings it was entered with.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>How the figure was read; null without one.</summary>
    public TraceStep? Step { get; private init; }

    /// <summary>Reads a chart.</summary>
    public static ChartReadout Read(CheckContext context, MakerChart chart, ChargeRow row)
    {
        var used = ImmutableArray.CreateBuilder<CorrectedReading>();
        if (Enter(context, chart.Across, row, used) is not { } across)
            return None(ChargeMessages.ChartEntryMissing(SchemaWords.Of(chart.Across.Reading.Value)), used);
        var down = chart.Down is null ? null : Enter(context, chart.Down, row, used);
        if (chart.Down is not null && down is null)
            return None(ChargeMessages.ChartEntryMissing(SchemaWords.Of(chart.Down.Reading.Value)), used);
        if (Shape(chart) is { } fault)
            return None(fault, used);

        var columns = Places(chart.Across);
        var reading = down is null
            ? new InterpolationTable(columns, chart.Values[0]).Read(across)
            : new InterpolationGrid(Places(chart.Down!), columns, Cells(chart.Values)).Read(down, across);
        if (reading.Value is { } value)
        {
            var kind = KindOf(chart.For.Value);
            return new ChartReadout
            {
                Value = value,
                Readings = used.ToImmutable(),
                Step = new TraceStep(
                    "target", context.Present.Text(ChargeMessages.ByMakersChart(SchemaWords.Of(chart.For.Value))), context.Present.Text(ChargeMessages.ChartFormula),
                    context.Present.Text(new ListValue([.. used.Select(u => ChargeMessages.ChartEntry(new(u.Name), Entered(context, u)))], ListJoin.Comma)), context.Present.Text(value, kind), chart.From.Value),
            };
        }

        var outside = reading.Miss switch
        {
            TableMiss.Blank => ChargeMessages.ChartBlank,
            TableMiss.OutsideFirst when down is not null => ChargeMessages.ChartOutside(SchemaWords.Of(chart.Down!.Reading.Value)),
            _ => ChargeMessages.ChartOutside(SchemaWords.Of(chart.Across.Reading.Value)),
        };
        return None(outside, used);
    }

    /// <summary>How a chart's figure is printed. Pressures of a chart are gauge pressures.</summary>
    /// <param name="quantity">What the chart gives.</param>
    public static DisplayKind KindOf(ChartQuantity quantity) => quantity switch
    {
        ChartQuantity.Superheat or ChartQuantity.Subcooling or ChartQuantity.TemperatureSplit => DisplayKind.TemperatureDifference,
        ChartQuantity.DischargeLine or ChartQuantity.VaporLine or ChartQuantity.LiquidLine => DisplayKind.Temperature,
        _ => DisplayKind.Pressure,
    };

    private static ChartReadout None(Message why, ImmutableArray<CorrectedReading>.Builder used) => new() { WhyNot = why, Readings = used.ToImmutable() };

    private static Uncertain? Enter(CheckContext context, ChartAxis axis, ChargeRow row, ImmutableArray<CorrectedReading>.Builder used)
    {
        var reading = axis.Reading.Value switch
        {
            ChartReading.OutdoorDryBulb => row.OutdoorDryBulb,
            ChartReading.OutdoorWetBulb => row.OutdoorWetBulb,
            ChartReading.ReturnDryBulb => row.ReturnDryBulb,
            ChartReading.ReturnWetBulb => row.ReturnWetBulb,
            ChartReading.LiquidPressure => row.LiquidPressure,
            ChartReading.VaporPressure => row.VaporPressure,
            _ => row.BoxTemperature,
        };
        if (reading is null)
            return null;
        used.Add(reading);

        // A chart in gauge pressure is entered with what the gauge shows: the atmosphere, which was added, goes again with its doubt.
        return axis.At.Length > 0 && axis.At[0].Value is { Dimension: Dimension.Pressure, Reference: PressureReference.Gauge }
            ? reading.Value - context.Get<SiteAtmosphere>().Value
            : reading.Value;
    }

    private static Messages.QuantityValue Entered(CheckContext context, CorrectedReading reading) =>
        context.Present.InMessage(reading.Value.Value, reading.Value.Value > 1000 ? DisplayKind.AbsolutePressure : DisplayKind.Temperature);

    private static IEnumerable<double> Places(ChartAxis axis) => axis.At.Select(a => a.Value.Si);

    private static double?[,] Cells(ImmutableArray<ImmutableArray<double?>> rows)
    {
        var cells = new double?[rows.Length, rows[0].Length];
        for (var r = 0; r < rows.Length; r++)
        {
            for (var c = 0; c < rows[r].Length; c++)
                cells[r, c] = rows[r][c];
        }

        return cells;
    }

    private static Message? Shape(MakerChart chart)
    {
        var rows = chart.Down?.At.Length ?? 1;
        var columns = chart.Across.At.Length;
        if (chart.Values.Length != rows || chart.Values.Any(r => r.Length != columns))
            return ChargeMessages.ChartNotFull(columns, rows);
        if (columns < 2 || rows == 1 && chart.Down is not null)
            return ChargeMessages.ChartSinglePlace;
        return Ascends(chart.Across) && (chart.Down is null || Ascends(chart.Down)) ? null : ChargeMessages.ChartNotRising;
    }

    private static bool Ascends(ChartAxis axis) => axis.At.Zip(axis.At.Skip(1)).All(pair => pair.Second.Value.Si > pair.First.Value.Si);
}
