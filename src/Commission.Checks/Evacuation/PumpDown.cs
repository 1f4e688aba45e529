using System.Globalization;
using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Readings;
using Commission.Fluids.Water;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Evacuation;

/// <summary>The last pull against the one that pump, hoses and volume lead to, worked out once for the check and the figure.</summary>
internal sealed class PumpDown : IAnalysis<PumpDown>
{
    // As in the analysis of a pull: slow is what takes this many times the expected time.
    private const double Explained = 2.5;

    private PumpDown(string? whyNot, SectionVolume? volume = null, SeriesSegment? pull = null, PullDownResult? result = null)
    {
        WhyNot = whyNot;
        Volume = volume;
        Pull = pull;
        Result = result;
    }

    /// <summary>Why there is no comparison; null when there is.</summary>
    public string? WhyNot { get; }

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
            yield return new FlowElement("a valve core", FlowElementKind.Core, context.Assume("assumption.valve-core.bore") * Math.Sqrt(Math.Sqrt(sides)), context.Assume("assumption.valve-core.length"));
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
