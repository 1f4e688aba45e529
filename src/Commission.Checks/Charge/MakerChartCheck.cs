using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Circuit;
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
            yield return Judge(context, row, "vapor pressure", low, vapor);
        if (context.Limits.Find(LimitIds.ChargeLiquidPressure) is { } liquid && row.LiquidPressure is { } high)
            yield return Judge(context, row, "liquid pressure", high, liquid);
        foreach (var figure in Transcritical(context, row))
            yield return new ChargeGates(row.Settling).Blocked is var (why, todo) ? context.Finding(this, figure.Subject).Use(figure.Reading).NotEvaluated(why, todo) : figure.Judge(context, this, ChargeMessages.GasCoolerNext);
    }

    // Above its critical point carbon dioxide has no saturation to hold a charge against: what the controller's maker asks for is all there is.
    private static IEnumerable<FigureOfMaker> Transcritical(CheckContext context, ChargeRow row)
    {
        var written = row.Written;
        if (written.GasCoolerPressure is { } cooler)
            yield return new($"gas cooler pressure, {row.Time}", context.Readings.Pressure($"gas cooler pressure, {row.Time}", ReadingName.LiquidPressure, cooler), DisplayKind.Pressure, LimitIds.ChargeGasCoolerPressure);
        if (written.GasCoolerOutlet is { } outlet)
            yield return new($"gas cooler outlet, {row.Time}", context.Readings.Temperature($"gas cooler outlet, {row.Time}", ReadingName.LiquidLine, outlet), DisplayKind.Temperature, LimitIds.ChargeGasCoolerOutlet);
        if (written.ReceiverPressure is { } receiver)
            yield return new($"receiver pressure, {row.Time}", context.Readings.Pressure($"receiver pressure, {row.Time}", ReadingName.LiquidPressure, receiver), DisplayKind.Pressure, LimitIds.ChargeReceiverPressure);
    }

    private Finding Judge(CheckContext context, ChargeRow row, string what, CorrectedReading pressure, Limit limit)
    {
        // Stated as the maker states it: above the atmosphere or absolute.
        var isGauge = (limit.Target ?? limit.Lower ?? limit.Upper)?.Reference == PressureReference.Gauge;
        var (y, kind) = isGauge ? (pressure.Value - context.Get<SiteAtmosphere>().Value, DisplayKind.Pressure) : (pressure.Value, DisplayKind.AbsolutePressure);
        var finding = context.Finding(this, $"{what}, {row.Time}").Use(pressure).Measure(y, kind);
        var gates = new ChargeGates(
            row.Settling, LogDrift.Of(context), RunningCondition.Of(context, row), MethodValidity.Of(context, row, ChargeCriterion.Subcooling), ChargePrerequisites.Of(context, row));
        gates.NameIn(finding);
        var text = context.Present.Text(y, kind);
        var words = $"{char.ToUpperInvariant(what[0])}{what[1..]} was {text} at {row.Time}";
        if (gates.Blocked is var (why, todo))
            return finding.Say($"{words} and is not judged: {why}.").NotEvaluated(why, todo);
        var state = limit.ToStatement(context.Present.Units);
        return state is { LowerSi: null, UpperSi: null }
            ? finding.Show(state).Information($"{words}; the maker's figure is {state.Text}.", "the maker gives no tolerance")
            : finding.JudgeCharge(context, new(y, kind, [pressure]), state, gates, $"{words}; {state.Text} is asked for.", "See the diagnosis before refrigerant is added or removed.");
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
        var finding = context.Finding(check, $"{chart.For.Text}, {row.Time}");
        var readout = ChartReadout.Read(context, chart, row);
        foreach (var reading in readout.Readings)
            finding.Use(reading);
        if (Read(chart.For.Value, row) is not { } judged)
            return finding.NotEvaluated($"{chart.For.Text} was not read", "Read it beside what the chart is entered with.");
        finding.Use(judged);
        var kind = ChartReadout.KindOf(chart.For.Value);
        // Pressures of a chart are those a gauge shows.
        var y = kind == DisplayKind.Pressure ? judged.Value - context.Get<SiteAtmosphere>().Value : judged.Value;
        finding.Measure(y, kind);
        gates.NameIn(finding);
        var text = context.Present.Text(y, kind);
        if (gates.Blocked is var (why, todo))
            return finding.Say($"{Capital(chart.For.Text)} was {text} at {row.Time} and is not judged: {why}.").NotEvaluated(why, todo);
        if (readout.Value is not { } target)
            return finding.NotEvaluated(readout.WhyNot!, "Wait for conditions the chart covers, or weigh the charge in.");
        finding.Step(readout.Step!);
        var asked = context.Present.Text(target.Value, kind);
        if (chart.Tolerance is not { } tolerance)
            return finding.Information($"{Capital(chart.For.Text)} was {text} at {row.Time}; the maker's chart says {asked}.", "the chart states no tolerance");
        var half = tolerance.Value.Si;
        var limit = new LimitStatement(
            LimitKind.Target, $"{asked} ± {tolerance.Text}", target.Value - half, target.Value + half, target.Value, LimitStatements.Word(LimitTier.Maker), "", chart.From.Value, "job", RuleOf(context))
        { Quantity = chart.For.Text };
        return finding.JudgeCharge(
            context, new(y, kind, [judged, .. readout.Readings]) { Target = target }, limit, gates,
            $"{Capital(chart.For.Text)} was {text} at {row.Time}; the maker's chart says {limit.Text}.",
            "Check the conditions the chart is entered with, then follow the maker's instructions for a reading off the chart.");
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

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

/// <summary>What a maker's chart says at a row of readings: bilinear between its places, nothing beyond them, nothing at a dash.</summary>
internal sealed record ChartReadout
{
    private ChartReadout()
    {
    }

    /// <summary>The figure, SI, with the doubt of the readings it was entered with; null when the chart says nothing.</summary>
    public Uncertain? Value { get; private init; }

    /// <summary>Why it says nothing; null when it says something.</summary>
    public string? WhyNot { get; private init; }

    /// <summary>The readings it was entered with.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>How the figure was read; null without one.</summary>
    public TraceStep? Step { get; private init; }

    /// <summary>Reads a chart.</summary>
    public static ChartReadout Read(CheckContext context, MakerChart chart, ChargeRow row)
    {
        var used = ImmutableArray.CreateBuilder<CorrectedReading>();
        if (Enter(context, chart.Across, row, used) is not { } across)
            return None($"{chart.Across.Reading.Text} was not read, and the maker's chart is entered with it", used);
        var down = chart.Down is null ? null : Enter(context, chart.Down, row, used);
        if (chart.Down is not null && down is null)
            return None($"{chart.Down.Reading.Text} was not read, and the maker's chart is entered with it", used);
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
                    "target", $"{chart.For.Text} by the maker's chart", "linear between the places of the chart",
                    string.Join(", ", used.Select(u => $"{u.Name}: {Entered(context, u)}")), context.Present.Text(value, kind), chart.From.Value),
            };
        }

        var outside = reading.Miss switch
        {
            TableMiss.Blank => "the maker's chart has a dash there",
            TableMiss.OutsideFirst when down is not null => $"{chart.Down!.Reading.Text} lies outside the maker's chart",
            _ => $"{chart.Across.Reading.Text} lies outside the maker's chart",
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

    private static ChartReadout None(string why, ImmutableArray<CorrectedReading>.Builder used) => new() { WhyNot = why, Readings = used.ToImmutable() };

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

    private static string Entered(CheckContext context, CorrectedReading reading) =>
        context.Present.Text(reading.Value.Value, reading.Value.Value > 1000 ? DisplayKind.AbsolutePressure : DisplayKind.Temperature);

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

    private static string? Shape(MakerChart chart)
    {
        var rows = chart.Down?.At.Length ?? 1;
        var columns = chart.Across.At.Length;
        if (chart.Values.Length != rows || chart.Values.Any(r => r.Length != columns))
            return string.Create(CultureInfo.InvariantCulture, $"the maker's chart does not have {columns} figures in each of {rows} rows");
        if (columns < 2 || rows == 1 && chart.Down is not null)
            return "the maker's chart has a single place along one side, so nothing lies between";
        return Ascends(chart.Across) && (chart.Down is null || Ascends(chart.Down)) ? null : "the places of the maker's chart do not rise";
    }

    private static bool Ascends(ChartAxis axis) => axis.At.Zip(axis.At.Skip(1)).All(pair => pair.Second.Value.Si > pair.First.Value.Si);
}
