using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Fluids.Water;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>The last pull against what pump, hoses and volume lead to: whether hose, core, pump, water or a gas load set its pace.</summary>
internal sealed class PumpDownCheck : ICheck
{
    public string Id => "evacuation.pump-down";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { Hoses.IsEmpty: false } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var pump = context.Get<PumpDown>();
        var finding = run.Name(context.Finding(this)).Use(EvacuationMessages.PullPumpDisplacement, evacuation.Pump?.Displacement).Use(EvacuationMessages.RigPumpAlone, evacuation.RigCheck?.PumpAlone)
            .Use(EvacuationMessages.PullValveCores, evacuation.ValveCores).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingTarget, evacuation.Target).Use(VacuumHoldMessages.ReadingAmbient, evacuation.Ambient).Use(VacuumHoldMessages.ReadingColdest, evacuation.ColdestPart);
        foreach (var hose in evacuation.Hoses)
            finding.Use(EvacuationMessages.PullHoseBore, hose.Bore).Use(EvacuationMessages.PullHoseLength, hose.Length).Use(EvacuationMessages.PullHosesAlike, hose.Count);
        foreach (var use in pump.Volume?.Uses ?? [])
            finding.Use(use);
        yield return pump.Result is { } result && pump.Pull is { } pull
            ? Told(context, run, pump, run.Name(finding, pull.From, pull.To), result)
            : finding.NotEvaluated(pump.WhyNot!, EvacuationMessages.PullMissingNext);
    }

    private static Finding Told(CheckContext context, EvacuationRun run, PumpDown pump, FindingBuilder finding, PullDownResult result)
    {
        var present = context.Present;
        foreach (var step in pump.Volume!.Steps)
            finding.Step(step);
        foreach (var band in result.Bands)
        {
            finding.Step(
                "t", EvacuationMessages.PullBand(VacuumText.Value(present, band.From), VacuumText.Value(present, band.To)), "∫ V·dp/(S_eff·p)",
                EvacuationMessages.PullExpected(new(band.ExpectedTime)), EvacuationClock.Span(band.MeasuredTime), EvacuationMessages.PullBandSource);
        }

        var way = result.AtEnd is { PumpSpeed: > 0 } end
            ? EvacuationMessages.PullSpeedLeft(
                VacuumText.Value(present, end.SystemPressure), new(string.Create(CultureInfo.InvariantCulture, $"{100 * end.Speed / end.PumpSpeed:0} %")), end.Limiting.Name ?? EvacuationMessages.PullPumpItself)
            : null;
        if (Next(result.Limit) is { } next)
            finding.Next(next);
        finding.Remark(way);
        if (pump.Volume.IsEstimated)
            finding.Remark(EvacuationMessages.PullVolumeEstimated);
        return finding.Information(
            result.Bands.IsEmpty
                ? EvacuationMessages.PullTooShort(run.Clock.Time(pump.Pull!.From))
                : EvacuationMessages.PullTook(
                    run.Clock.Time(pump.Pull!.From), new(result.MeasuredTime), VacuumText.Value(present, result.Bands[0].From), VacuumText.Value(present, result.Bands[^1].To), new(result.ExpectedTime), Pace(result.Limit)),
            EvacuationMessages.PullKind);
    }

    private static EvacuationMessages.PullTookPace Pace(PullDownLimit limit) => limit switch
    {
        PullDownLimit.Pump => EvacuationMessages.PullTookPace.Pump,
        PullDownLimit.Hose => EvacuationMessages.PullTookPace.Hose,
        PullDownLimit.Core => EvacuationMessages.PullTookPace.Core,
        PullDownLimit.Fitting => EvacuationMessages.PullTookPace.Fitting,
        PullDownLimit.BoilingWater => EvacuationMessages.PullTookPace.Water,
        PullDownLimit.GasLoad => EvacuationMessages.PullTookPace.Gas,
        _ => EvacuationMessages.PullTookPace.Throughout,
    };

    private static Message? Next(PullDownLimit limit) => limit switch
    {
        PullDownLimit.Hose => EvacuationMessages.PullHoseNext,
        PullDownLimit.Core => EvacuationMessages.PullCoreNext,
        PullDownLimit.BoilingWater => EvacuationMessages.PullWaterNext,
        PullDownLimit.GasLoad => EvacuationMessages.PullGasNext,
        PullDownLimit.SlowThroughout => EvacuationMessages.PullSlowNext,
        _ => null,
    };
}

/// <summary>The last pull against the one that pump, hoses and volume lead to, worked out once for the check and the figure.</summary>
internal sealed class PumpDown : IAnalysis<PumpDown>
{
    // As in the analysis of a pull: slow is what takes this many times the expected time.
    private const double Explained = 2.5;

    private PumpDown(Message? whyNot, SectionVolume? volume = null, SeriesSegment? pull = null, PullDownResult? result = null)
    {
        WhyNot = whyNot;
        Volume = volume;
        Pull = pull;
        Result = result;
    }

    /// <summary>Why there is no comparison; null when there is.</summary>
    public Message? WhyNot { get; }

    /// <summary>The volume pumped; null when it was not asked for.</summary>
    public SectionVolume? Volume { get; }

    /// <summary>The pull compared.</summary>
    public SeriesSegment? Pull { get; }

    /// <summary>The comparison; null when something it needs is not known.</summary>
    public PullDownResult? Result { get; }

    /// <inheritdoc/>
    public static PumpDown Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Job.Evacuation is not { Hoses.IsEmpty: false } evacuation)
            return new PumpDown(EvacuationMessages.PullNoHoses);
        var run = context.Get<EvacuationRun>();
        if (evacuation.Pump?.Displacement is not { } displacement)
            return new PumpDown(EvacuationMessages.PullNoDisplacement);
        if (run.Rows.Log is null)
            return new PumpDown(EvacuationMessages.PullByHand);
        if (run.View.LevelBlock is { } block)
            return new PumpDown(block);
        if (run.Parts.Segments.LastOrDefault(s => s.Kind == SegmentKind.Pull && (run.Parts.Isolation is not { } isolation || s.From < isolation)) is not { } pull)
            return new PumpDown(EvacuationMessages.PullNone);
        var volume = SectionVolume.Of(context, evacuation.Section);
        if (volume.Value is not { } v)
            return new PumpDown(volume.WhyNot, volume, pull);
        var model = new PullDownModel(Elements(context, evacuation), PumpCurve.Rated(displacement.Value.Si, evacuation.RigCheck?.PumpAlone?.Value.Si ?? 0));
        var warmest = evacuation.Ambient ?? evacuation.ColdestPart;
        var saturation = warmest is not null && WaterVapor.SaturationPressure(warmest.Value.Si) is { Ok: true, Value: var p } ? p : (double?)null;
        var result = PullDownAnalysis.Compare(run.Rows.Series, pull, model, v.Value, run.Level?.Upper?.Si ?? run.AtIsolation?.Value ?? 1, saturation);
        if (result.Limit == PullDownLimit.SlowThroughout && WasFastAboveRange(run, pull, model, v.Value, context.Get<SiteAtmosphere>().Value.Value))
            result = result with { Limit = PullDownLimit.GasLoad };
        return new PumpDown(null, volume, pull, result);
    }

    // A gauge that begins at a few thousand micron shows only where gas load rules anyway. How soon it came into its range tells of the rig.
    private static bool WasFastAboveRange(EvacuationRun run, SeriesSegment pull, PullDownModel model, double volume, double atmosphere)
    {
        var series = run.Rows.Series;
        var first = series.IndexAtOrAfter(pull.From);
        while (first < series.Count && series.Times[first] <= pull.To && series.OverRange[first])
            first++;
        return first > 0 && first < series.Count && series.OverRange[first - 1]
            && series.Times[first] - pull.From <= Explained * (model.Time(volume, atmosphere, series.Pressures[first]) + series.MedianInterval);
    }

    private static IEnumerable<FlowElement> Elements(CheckContext context, Jobs.Model.Evacuation evacuation)
    {
        if (evacuation.ValveCores?.Value == ValveCores.InPlace)
        {
            // Two cores side by side pass twice the viscous flow, as one of 2^¼ the bore does.
            var sides = evacuation.Ports?.Value == PortCount.Both ? 2 : 1;
            yield return new FlowElement(EvacuationMessages.PullACore, FlowElementKind.Core, context.Assume(LimitIds.AssumptionValveCoreBore) * Math.Sqrt(Math.Sqrt(sides)), context.Assume(LimitIds.AssumptionValveCoreLength));
        }

        foreach (var hose in evacuation.Hoses)
        {
            // Hoses side by side pass as much as one of the same bore and a fraction of the length, whatever the flow.
            var count = hose.Count?.Value ?? 1;
            var name = count > 1 ? EvacuationMessages.PullTheHoses(count, new(hose.Bore.Text)) : EvacuationMessages.PullTheHose(new(hose.Bore.Text));
            yield return new FlowElement(name, FlowElementKind.Hose, hose.Bore.Value.Si, hose.Length.Value.Si / Math.Max(count, 1));
        }
    }
}

/// <summary>How long the pump stayed on after the level was reached, where a pack asks for it.</summary>
internal sealed class PumpDwellCheck : ICheck
{
    public string Id => "evacuation.dwell";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation || context.Limits.Find(LimitIds.EvacuationDwell) is not { Lower: not null } limit)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Name(context.Finding(this)).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingTarget, evacuation.Target);
        var statement = context.State(limit);
        if (run.Level?.Upper is not { } target || run.Parts.Isolation is not { } isolation)
        {
            yield return finding.Show(statement).NotEvaluated(EvacuationMessages.DwellNoIsolation, EvacuationMessages.DwellNoIsolationNext);
            yield break;
        }

        if (run.View.LevelBlock is { } block)
        {
            yield return finding.Show(statement).NotEvaluated(block, EvacuationMessages.DwellGaugeNext);
            yield break;
        }

        run.Name(finding, Reached(run, target.Si, isolation) ?? isolation, isolation);
        if (Reached(run, target.Si, isolation) is not { } reached)
        {
            yield return finding.Show(statement).NotEvaluated(EvacuationMessages.DwellLevelNotRead, EvacuationMessages.DwellLevelNotReadNext);
            yield break;
        }

        var dwell = isolation - reached;
        finding.Step("t", EvacuationMessages.DwellStep, EvacuationMessages.DwellFormula, $"{run.Clock.Moment(isolation)} − {run.Clock.Moment(reached)}", EvacuationClock.Span(dwell), limit.Source);
        finding.Judge(Uncertain.Exact(dwell), DisplayKind.Duration, statement);
        yield return finding.Conclude(
            EvacuationMessages.DwellLongEnough(new(dwell), VacuumText.Value(context.Present, target.Si)),
            EvacuationMessages.DwellTooShort(new(dwell), VacuumText.Value(context.Present, target.Si)),
            this.WhenItFails());
    }

    // From when on every reading up to isolation is at the level: a level touched once and lost again does not count.
    private static double? Reached(EvacuationRun run, double level, double isolation)
    {
        var series = run.Rows.Series;
        double? reached = null;
        for (var i = series.IndexAtOrAfter(isolation) - 1; i >= 0 && !series.OverRange[i] && series.Pressures[i] <= level; i--)
            reached = series.Times[i];
        return reached;
    }
}
