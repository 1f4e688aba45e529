using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>
/// The evacuation of a job, worked out once: its readings on one clock with its events, cut into pulls, breaks and holds; the hold read
/// for the decay limit and analysed for its cause; the gauge.
/// </summary>
internal sealed class EvacuationRun : IAnalysis<EvacuationRun>
{
    // Half-width of the change of temperature over a hold nobody recorded, K; a recorded change counts where it is larger.
    private const double TemperatureDrift = 1;
    private const double LongestSlack = 60;

    private readonly CheckContext _context;
    private readonly Lazy<HoldResult?> _hold;

    private EvacuationRun(CheckContext context, Jobs.Model.Evacuation evacuation)
    {
        _context = context;
        Evacuation = evacuation;
        Clock = EvacuationClock.Of(context.Job);
        var instrument = context.Get<InstrumentKit>().For(ReadingName.Evacuation, evacuation.With);
        Gauge = new VacuumGauge(context, instrument, evacuation.Series?.Data?.Step ?? evacuation.Levels.Select(l => l.Pressure.Step ?? 0).DefaultIfEmpty().Max());
        Rows = new VacuumRows(context, evacuation, Clock, Gauge);
        View = GaugeView.Of(evacuation);
        Parts = SeriesSegmentation.Cut(Rows.Series, [.. Events(evacuation)], Gauge.Resolution);
        Level = context.Limits.Find(LimitIds.EvacuationLevel);
        DecayLimit = context.Limits.Find(LimitIds.EvacuationDecay);
        Decay = Read(DecayLimit?.Companion("after"));
        _hold = new(Analyse);
    }

    /// <summary>The evacuation as written; one without anything when the job has none.</summary>
    public Jobs.Model.Evacuation Evacuation { get; }

    public EvacuationClock Clock { get; }

    public VacuumGauge Gauge { get; }

    /// <summary>What the gauge could see.</summary>
    public GaugeView View { get; }

    /// <summary>The readings.</summary>
    public VacuumRows Rows { get; }

    /// <summary>Pulls, breaks and holds.</summary>
    public SegmentedSeries Parts { get; }

    /// <summary>The level to be reached; null when nobody sets one.</summary>
    public Limit? Level { get; }

    /// <summary>The decay limit with its time; null when nobody sets one.</summary>
    public Limit? DecayLimit { get; }

    /// <summary>The hold read for the decay limit; null without a hold or without a stated time.</summary>
    public DecayReading? Decay { get; }

    /// <summary>What the hold shows of its cause; null without a hold.</summary>
    public HoldResult? Hold => _hold.Value;

    /// <summary>Steady part of the rise with its causes, Pa/s; null where the hold gives none.</summary>
    public Uncertain? Slope => Hold?.SlopeWithCauses is { } slope ? _context.Scope.Input(Entered(slope)) : null;

    /// <summary>Mean rise from isolation to the last reading of the hold, Pa/s, for readings too few for a curve; null without two readings.</summary>
    public Uncertain? MeanRise
    {
        get
        {
            if (Parts is not { Isolation: { } isolation, HoldEnd: { } end } || AtIsolation is not { } begun)
                return null;
            var last = Rows.Series.IndexAtOrAfter(end);
            if (last == Rows.Series.Count || Rows.Series.Times[last] > end)
                last--;
            return last < 0 || Rows.Series.OverRange[last] || Rows.Series.Times[last] <= isolation ? null : (Rows.Row(last) - begun) / (Rows.Series.Times[last] - isolation);
        }
    }

    /// <summary>Pressure at isolation with its uncertainty; null when there is none.</summary>
    public Uncertain? AtIsolation => Parts.Isolation is { } t ? Rows.At(t) : null;

    /// <summary>How long after the isolation that is written the readings begin, s; zero when they were running by then, null when no isolation is written.</summary>
    public double? ReadingsBeginLate =>
        Events(Evacuation).Where(e => e.Kind == VacuumEventKind.Isolated).Select(e => (double?)e.Time).LastOrDefault() is { } written && Rows.Series.Count > 0
            ? Math.Max(0, Rows.Series.Times[0] - written)
            : null;

    /// <summary>When the valve was closed, as the job writes it; null when it does not.</summary>
    public TimeValue? ClosedAsWritten => Events(Evacuation).Where(e => e.Kind == VacuumEventKind.Isolated).Select(e => (double?)e.Time).LastOrDefault() is { } closed ? Clock.Time(closed) : null;

    /// <inheritdoc/>
    public static EvacuationRun Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new EvacuationRun(context, context.Job.Evacuation ?? new Jobs.Model.Evacuation());
    }

    /// <summary>Reads the hold for a limit that is judged some time after isolation.</summary>
    /// <param name="after">The stated time, s; null when none is stated.</param>
    public DecayReading? Read(double? after) => after is { } time && Parts is { Isolation: { } isolation, HoldEnd: { } end }
        ? DecayJudgement.Read(Rows.Series, isolation, end, time, Rows.LongestBridge)
        : null;

    /// <summary>How much shorter than the stated time a hold may be by its log's own step, s.</summary>
    public double Slack => Rows.Log is null ? 0 : Math.Min(Rows.Series.MedianInterval, LongestSlack);

    /// <summary>Names what tells pulls, breaks and hold apart: the log, the start, the events.</summary>
    public FindingBuilder Name(FindingBuilder finding)
    {
        finding.Use("evacuation log", Evacuation.Series?.File, Gauge.Id).Use("pump started", Evacuation.Started);
        foreach (var e in Evacuation.Events)
            finding.Use($"event: {e.What.Text}", e.At);
        return finding;
    }

    /// <summary>Names the readings of a stretch: each level written by hand, of a log the first and the last row.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="from">Begin, s.</param>
    /// <param name="to">End, s.</param>
    public FindingBuilder Name(FindingBuilder finding, double from, double to)
    {
        var series = Rows.Series;
        var first = series.IndexAtOrAfter(from);
        var last = Math.Min(series.IndexAtOrAfter(to), series.Count - 1);
        // The row before counts where the pressure is read between two rows.
        if (first > 0 && first < series.Count && series.Times[first] > from)
            first--;
        for (var i = first; i <= last; i++)
        {
            if (Rows.Log is null || i == first || i == last)
                finding.Use(Rows.Use(i));
        }

        return finding;
    }

    private Uncertain Entered(Uncertain slope)
    {
        foreach (var line in slope.Budget)
            _context.Causes.Enter(line.Cause, DisplayKind.VacuumRise);
        return slope;
    }

    private IEnumerable<VacuumEvent> Events(Jobs.Model.Evacuation evacuation)
    {
        foreach (var e in evacuation.Events)
        {
            if (Clock.Seconds(e.At.Value) is { } time && Kind(e.What.Value) is { } kind)
                yield return new VacuumEvent(time, kind);
        }

        if (evacuation.Events.Any(e => e.What.Value == EvacuationEventKind.Isolated))
            yield break;
        if (evacuation.Levels.FirstOrDefault(l => l.Isolated?.Value == true) is { } closed && Clock.Seconds(closed.At.Value) is { } begun)
            yield return new VacuumEvent(begun, VacuumEventKind.Isolated);
    }

    // Heat, fresh oil and a clean gauge leave the circuit where it is: they are drawn and cut nothing.
    private static VacuumEventKind? Kind(EvacuationEventKind kind) => kind switch
    {
        EvacuationEventKind.PumpOn => VacuumEventKind.PumpStarted,
        EvacuationEventKind.NitrogenBreak or EvacuationEventKind.Opened => VacuumEventKind.NitrogenBreak,
        EvacuationEventKind.Isolated => VacuumEventKind.Isolated,
        EvacuationEventKind.End => VacuumEventKind.Ended,
        _ => null,
    };

    private HoldResult? Analyse()
    {
        if (Parts is not { Isolation: { } isolation, HoldEnd: { } end })
            return null;
        var begun = Rows.Series.PressureAt(isolation, Rows.LongestBridge);
        var allowed = DecayLimit?.Upper?.Si - begun;
        var change = Evacuation is { ColdestPart: { } cold, ColdestPartAtEnd: { } later } ? Math.Abs(later.Value.Si - cold.Value.Si) : 0;
        var skip = Math.Min(_context.Assume(LimitIds.AssumptionHoldEqualisation), Math.Max((end - isolation) / 10, _context.Assume(LimitIds.AssumptionHoldEqualisation) / 2));
        return HoldAnalysis.Analyze(
            Rows.Series, isolation, end, Gauge.CharacterAt(begun ?? DecayLimit?.Upper?.Si ?? 0), new HoldOptions(allowed, skip, Math.Max(TemperatureDrift, change)));
    }
}
