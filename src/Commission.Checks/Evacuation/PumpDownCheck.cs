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
        var finding = run.Name(context.Finding(this)).Use("pump displacement", evacuation.Pump?.Displacement).Use("pump alone", evacuation.RigCheck?.PumpAlone)
            .Use("valve cores", evacuation.ValveCores).Use("where the gauge sat", evacuation.Gauge).Use("target", evacuation.Target).Use("ambient", evacuation.Ambient).Use("coldest part", evacuation.ColdestPart);
        foreach (var hose in evacuation.Hoses)
            finding.Use("hose: bore", hose.Bore).Use("hose: length", hose.Length).Use("hoses alike", hose.Count);
        foreach (var use in pump.Volume?.Uses ?? [])
            finding.Use(use);
        yield return pump.Result is { } result && pump.Pull is { } pull
            ? Told(context, run, pump, run.Name(finding, pull.From, pull.To), result)
            : finding.NotEvaluated(pump.WhyNot!, "Write the pump's displacement, the hoses with bore and length, the line set, and log the pull from its start.");
    }

    private static Finding Told(CheckContext context, EvacuationRun run, PumpDown pump, FindingBuilder finding, PullDownResult result)
    {
        var present = context.Present;
        foreach (var step in pump.Volume!.Steps)
            finding.Step(step);
        foreach (var band in result.Bands)
        {
            finding.Step(
                "t", $"{VacuumText.Level(present, band.From)} to {VacuumText.Level(present, band.To)}", "∫ V·dp/(S_eff·p)",
                $"expected {EvacuationClock.Span(band.ExpectedTime)}", $"{EvacuationClock.Span(band.MeasuredTime)}", "conductance of hoses by Knudsen, of openings by Clausing (from memory)");
        }

        var way = result.AtEnd is { PumpSpeed: > 0 } end
            ? string.Create(CultureInfo.InvariantCulture, $"At {VacuumText.Level(present, end.SystemPressure)} {100 * end.Speed / end.PumpSpeed:0} % of the pump's speed was left at the system; {(end.Limiting.Kind is null ? "the pump itself" : end.Limiting.Name)} took the largest part.")
            : null;
        if (Next(result.Limit) is { } next)
            finding.Next(next);
        finding.Remark(way);
        if (pump.Volume.IsEstimated)
            finding.Remark("The volume is estimated from the line set.");
        return finding.Information(
            result.Bands.IsEmpty
                ? EvacuationMessages.PullTooShort(run.Clock.Time(pump.Pull!.From))
                : EvacuationMessages.PullTook(
                    run.Clock.Time(pump.Pull!.From), new(result.MeasuredTime), VacuumText.Value(present, result.Bands[0].From), VacuumText.Value(present, result.Bands[^1].To), new(result.ExpectedTime), Pace(result.Limit)),
            "compares the pull with pump and hoses; sets no limit");
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

    private static string? Next(PullDownLimit limit) => limit switch
    {
        PullDownLimit.Hose => "A wider and shorter hose would help more than a larger pump.",
        PullDownLimit.Core => "Take the valve cores out with a core tool.",
        PullDownLimit.BoilingWater => "Warm the circuit, break with dry nitrogen and pull again: water is leaving.",
        PullDownLimit.GasLoad => "Blank off the rig and see how low it goes; change the pump oil; then look for water and leaks.",
        PullDownLimit.SlowThroughout => "Look for a closed valve, a blocked core, a worn pump, or a circuit larger than written.",
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
            return new PumpDown("no hoses are written");
        var run = context.Get<EvacuationRun>();
        if (evacuation.Pump?.Displacement is not { } displacement)
            return new PumpDown("the pump's displacement is not written");
        if (run.Rows.Log is null)
            return new PumpDown("levels written by hand do not show the pull");
        if (run.View.LevelBlock is { } block)
            return new PumpDown(block);
        if (run.Parts.Segments.LastOrDefault(s => s.Kind == SegmentKind.Pull && (run.Parts.Isolation is not { } isolation || s.From < isolation)) is not { } pull)
            return new PumpDown("the log shows no pull");
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
            yield return new FlowElement("a valve core", FlowElementKind.Core, context.Assume(LimitIds.AssumptionValveCoreBore) * Math.Sqrt(Math.Sqrt(sides)), context.Assume(LimitIds.AssumptionValveCoreLength));
        }

        foreach (var hose in evacuation.Hoses)
        {
            // Hoses side by side pass as much as one of the same bore and a fraction of the length, whatever the flow.
            var count = hose.Count?.Value ?? 1;
            var name = string.Create(CultureInfo.InvariantCulture, $"{(count > 1 ? $"{count} hoses of" : "the hose of")} {hose.Bore.Text}");
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
        var finding = run.Name(context.Finding(this)).Use("where the gauge sat", evacuation.Gauge).Use("target", evacuation.Target);
        var statement = context.State(limit);
        if (run.Level?.Upper is not { } target || run.Parts.Isolation is not { } isolation)
        {
            yield return finding.Show(statement).NotEvaluated("neither the readings nor the events say when the valve was closed", "Write a log from the start to the hold, and when the valve was closed.");
            yield break;
        }

        if (run.View.LevelBlock is { } block)
        {
            yield return finding.Show(statement).NotEvaluated(block, "Put the gauge at the system, beyond the valve that is closed.");
            yield break;
        }

        run.Name(finding, Reached(run, target.Si, isolation) ?? isolation, isolation);
        if (Reached(run, target.Si, isolation) is not { } reached)
        {
            yield return finding.Show(statement).NotEvaluated("no reading before isolation shows the level reached", "Log the pull, or write the level when it is reached.");
            yield break;
        }

        var dwell = isolation - reached;
        finding.Step("t", "time with the pump on at the level", "isolation − level reached", $"{run.Clock.Moment(isolation)} − {run.Clock.Moment(reached)}", EvacuationClock.Span(dwell), limit.Source);
        finding.Judge(Uncertain.Exact(dwell), DisplayKind.Duration, statement);
        yield return finding.Conclude(
            $"The pump stayed on for {EvacuationClock.Span(dwell)} after {VacuumText.Level(context.Present, target.Si)} was reached.",
            $"The pump stayed on for only {EvacuationClock.Span(dwell)} after {VacuumText.Level(context.Present, target.Si)} was reached.",
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
