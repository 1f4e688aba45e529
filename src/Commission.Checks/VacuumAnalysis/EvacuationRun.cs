using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Fluids.Water;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
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
    // Half-width of the change of temperature over a hold, K: nobody recorded it, or the coldest part stands for the rest (common practice, no source).
    private const double TemperatureDrift = 1;
    private const double LongestSlack = 60;

    // Time constant with which pipes and coils take the temperature of the air, s (common practice, no source).
    private const double MetalCools = 300;

    // A log that begins later and already under vacuum did not see the pump pull down.
    private const double LateLog = 120;
    private const double UnderVacuum = 5000;

    private readonly CheckContext _context;
    private readonly Lazy<HoldResult?> _hold;
    private readonly Lazy<HoldObstacle?> _obstacle;

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
        _obstacle = new(() => View.HoldBlock is { } block ? new HoldObstacle(block, EvacuationMessages.HoldGaugeCutOffNext) : HoldObstacle.OfDisplay(this, context.Present) ?? HoldObstacle.OfFall(this, context.Present) ?? HoldObstacle.OfTeeth(this, context.Present));
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

    /// <summary>Why the hold says nothing of the system, whatever its numbers; null when it does.</summary>
    public HoldObstacle? Obstacle => _obstacle.Value;

    /// <summary>Why the level at isolation says nothing of the system; null when it does.</summary>
    public HoldObstacle? LevelObstacle => View.LevelBlock is { } block ? new HoldObstacle(block, EvacuationMessages.LevelGaugeNext) : View.HoldBlock is null && Obstacle is { IsFall: false } display ? display : null;

    /// <summary>Temperatures of the coldest part through the hold.</summary>
    public ColdestPart Temperatures => field ??= new(Evacuation, Clock);

    /// <summary>Whether the section under vacuum ends at closed service valves that a charge stands behind.</summary>
    public bool IsBesideChargedUnit => Evacuation.Section?.Value is CircuitSection.LineSet or CircuitSection.LineSetAndIndoor or CircuitSection.Indoor;

    /// <summary>Whether the circuit holds its charge by now: nobody pulls down again.</summary>
    public bool IsCharged => _context.Job.Charging is not null;

    /// <summary>What is written that lets an isolated vacuum deepen; null when nothing is.</summary>
    /// <param name="finding">The finding that rests on it; null where nobody tells it.</param>
    public Message? WhyItMayFall(FindingBuilder? finding = null)
    {
        if (finding is not null)
            Temperatures.NameIn(finding);
        if (Hold?.Fall is { } fall && Temperatures.Log is { } log)
        {
            var (warm, cold) = (log(fall.From), log(fall.To));
            if (cold < warm && Follows(fall, warm, cold))
                return EvacuationMessages.FallCooledMeanwhile(_context.Present.InMessage(warm, DisplayKind.Temperature), _context.Present.InMessage(cold, DisplayKind.Temperature));
        }
        else if (Evacuation is { ColdestPart: { } before, ColdestPartAtEnd: { } after } && after.Value.Si < before.Value.Si && CoolingExplains(before.Value.Si, after.Value.Si))
        {
            return EvacuationMessages.FallCooled(new(before.Text), new(after.Text));
        }

        if (Evacuation.Events.FirstOrDefault(e => e.What.Value == EvacuationEventKind.HeatApplied) is { } heated)
            return EvacuationMessages.FallAfterHeat(new(heated.At.Text));
        if (_context.Job.Equipment.Drier is not [var drier, ..])
            return null;
        finding?.Use(VacuumHoldMessages.ReadingDrier, drier.Model);
        return EvacuationMessages.FallIntoDrier;
    }

    // In a minute metal cools by a part of the whole change only.
    private bool CoolingExplains(double before, double after)
    {
        if (Hold?.Fall is not { } fall)
            return true;
        var minute = before + ((after - before) * (1 - Math.Exp(-PressureFall.Minute / MetalCools)));
        return Follows(fall, before, after) && Follows(fall with { Low = fall.High * fall.SteepestMinute }, before, minute);
    }

    // At most all of it was water vapor, which falls with its saturation; the gauge's own scatter comes on top.
    private static bool Follows(PressureFall fall, double before, double after) =>
        WaterVapor.SaturationPressure(before) is { Ok: true, Value: var warm } && WaterVapor.SaturationPressure(after) is { Ok: true, Value: var cold } && fall.Low + fall.Scatter >= fall.High * cold / warm;

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

    // The clock counts from the start where one is written.
    private double? PumpStarted => Events(Evacuation).Where(e => e.Kind == VacuumEventKind.PumpStarted).Select(e => (double?)e.Time).Min() ?? (Evacuation.Started is null ? null : 0);

    /// <summary>How long after the pump's start the log begins, s, where it begins under vacuum; null where it does not, or nobody wrote the start.</summary>
    public double? LogBeginsLate =>
        Rows is { Log: not null, Series: { Count: > 0 } series } && PumpStarted is { } started
        && series.Times[0] - started > LateLog && !series.OverRange[0] && series.Pressures[0] < UnderVacuum ? series.Times[0] - started : null;

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
        finding.Use(VacuumHoldMessages.ReadingLog, Evacuation.Series?.File, Gauge.Id).Use(VacuumHoldMessages.ReadingPumpStarted, Evacuation.Started);
        foreach (var e in Evacuation.Events)
            finding.Use(VacuumHoldMessages.ReadingEvent(new(e.What.Text)), e.At);
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
        var pumped = PumpStarted ?? Rows.Series.Times[0];
        var skip = Math.Min(_context.Assume(LimitIds.AssumptionHoldEqualisation), Math.Max((end - isolation) / 10, _context.Assume(LimitIds.AssumptionHoldEqualisation) / 2));
        return HoldAnalysis.Analyze(
            Rows.Series, isolation, end, Gauge.CharacterAt(begun ?? DecayLimit?.Upper?.Si ?? 0), new HoldOptions(allowed, skip, TemperatureDrift)
            {
                AllowedAfter = DecayLimit?.Companion("after"),
                Warming = Temperatures.Warming(isolation, end),
                Pumped = isolation > pumped ? isolation - pumped : null,
            });
    }
}

/// <summary>Why a hold says nothing of the system, and what to do about it.</summary>
/// <param name="Why">The reason.</param>
/// <param name="Next">What makes it possible.</param>
internal sealed record HoldObstacle(Message Why, Message Next)
{
    /// <summary>Whether the readings live and the circuit was not left alone: then they are evidence of that.</summary>
    public bool IsFall { get; private init; }

    /// <summary>A fall that a closed circuit does not show and that nothing written explains; null where there is none.</summary>
    /// <param name="run">The evacuation.</param>
    /// <param name="present">How the job prints numbers.</param>
    public static HoldObstacle? OfFall(EvacuationRun run, Presentation present) => run.Hold?.Fall is { } fall && run.WhyItMayFall() is null
        ? new(EvacuationMessages.HoldFell(VacuumText.Value(present, fall.High), VacuumText.Value(present, fall.Low), new(fall.To - fall.From)), FellNext(run)) { IsFall = true }
        : null;

    /// <summary>Falls within half a minute again and again; null where there are none.</summary>
    /// <param name="run">The evacuation.</param>
    /// <param name="present">How the job prints numbers.</param>
    public static HoldObstacle? OfTeeth(EvacuationRun run, Presentation present) => run.Hold?.Teeth is { Count: > 0 and var count, Taken: var taken }
        ? new(EvacuationMessages.HoldTeeth(count, VacuumText.Value(present, taken)), FellNext(run)) { IsFall = true }
        : null;

    /// <summary>What to do about a fall.</summary>
    /// <param name="run">The evacuation.</param>
    public static Message FellNext(EvacuationRun run) => EvacuationMessages.HoldFellNext(run.IsCharged ? EvacuationMessages.HoldFellNextCharge.In : EvacuationMessages.HoldFellNextCharge.Out);

    // A display of small steps that does not move through so many rows is no display of a gas (common practice, no source).
    private const int ManyRows = 100;
    private const double LongStill = 300;
    private const int FewRows = 10;

    // A display that changed so often before, and by no less at last, does not stand for so long but once in a million holds. What levels off changes by less and less.
    private const double Chance = 1e-6;
    private const int Some = 20;
    private const double Less = 0.5;

    // From one row to the next, seconds apart, no gas leaves a closed circuit.
    private const double SuddenShare = 0.3;
    private const double Sudden = 15;
    private const double SmallStep = 1.01 * ConversionFactors.Micron;

    /// <summary>A display that does not live, or that did not see what the crew did; null where it does.</summary>
    /// <param name="run">The evacuation.</param>
    /// <param name="present">How the job prints numbers.</param>
    public static HoldObstacle? OfDisplay(EvacuationRun run, Presentation present)
    {
        if (run is not { Rows: { Log: not null, Series: var series }, Parts: { Isolation: { } isolation, HoldEnd: { } end } })
            return null;
        var (pull, hold) = (Shown.Of(series, series.Times[0], isolation), Shown.Of(series, isolation, end));
        if (hold is { Rows: >= FewRows, Values: 1, Last: 0 } || (pull.Rows >= FewRows / 2 && hold.Rows > 0 && pull.Rows + hold.Rows >= FewRows && Shown.Of(series, series.Times[0], end).Values <= 2))
            return new(EvacuationMessages.HoldDisplayStill(VacuumText.Value(present, hold.Last), hold.Rows), EvacuationMessages.HoldDisplayNext);
        if (hold.StillFor >= LongStill && run.Gauge.ResolutionAt(hold.StillAt) <= SmallStep && (hold.Still >= ManyRows || (hold.Still >= Some && StandsBeyondChance(series, isolation, hold.StillFrom, hold.Still))))
            return new(EvacuationMessages.HoldDisplayFrozen(VacuumText.Value(present, hold.StillAt), hold.Still), EvacuationMessages.HoldDisplayNext);
        if (hold.Drop is { } row)
            return new(EvacuationMessages.HoldJumped(VacuumText.Value(present, series.Pressures[row - 1]), VacuumText.Value(present, series.Pressures[row]), run.Clock.Time(series.Times[row])), EvacuationMessages.HoldJumpedNext);
        return run.Parts.MissedBreaks is [var missed, ..] ? new(EvacuationMessages.HoldBreakMissing(run.Clock.Time(missed)), EvacuationMessages.HoldBreakMissingNext) : null;
    }

    private static bool StandsBeyondChance(VacuumSeries series, double isolation, int from, int rows)
    {
        if (from < Some)
            return false;
        var (changed, early, late, before) = (0, 0.0, 0.0, 0.0);
        for (var i = from - Some + 1; i < from; i++)
        {
            var step = series.OverRange[i] || series.OverRange[i - 1] ? 0 : series.Pressures[i] - series.Pressures[i - 1];

            // While the pump pulls the pressure falls anyhow: there only a turn tells that the gauge lives.
            changed += series.Times[i] > isolation ? step != 0 ? 1 : 0 : step * before < 0 ? 1 : 0;
            (early, late) = i < from - (Some / 2) ? (early + Math.Abs(step), late) : (early, late + Math.Abs(step));
            before = step;
        }

        return late >= Less * early && Math.Pow(1 - ((double)changed / Some), rows) < Chance;
    }

    // What the display showed over a stretch: rows, up to three different values, the longest run of one value, and the row at which it dropped at once.
    private readonly record struct Shown(int Rows, int Values, double Last, int Still, double StillFor, double StillAt, int StillFrom, int? Drop)
    {
        public static Shown Of(VacuumSeries series, double from, double to)
        {
            HashSet<double> values = [];
            var (rows, still, stillFor, stillAt, stillFrom, since, run) = (0, 0, 0.0, 0.0, 0, 0.0, 0);
            var last = double.NaN;
            int? drop = null;
            for (var i = series.IndexAtOrAfter(from); i < series.Count && series.Times[i] <= to; i++)
            {
                if (series.OverRange[i])
                    continue;
                var value = series.Pressures[i];
                rows++;
                if (values.Count < 3)
                    values.Add(value);
                (run, since) = value.Equals(last) ? (run + 1, since) : (1, series.Times[i]);
                if (run > still)
                    (still, stillFor, stillAt, stillFrom) = (run, series.Times[i] - since, value, i - run + 1);
                if (rows > 1 && !series.OverRange[i - 1] && series.Times[i] - series.Times[i - 1] <= Sudden && Stays(series, i, to))
                    drop ??= i;
                last = value;
            }

            return new(rows, values.Count, rows > 0 ? last : 0, still, stillFor, stillAt, stillFrom, drop);
        }

        // Down by its share at once, and down it stays: a lone spike turns nothing.
        private static bool Stays(VacuumSeries series, int row, double to)
        {
            var least = (1 - SuddenShare) * series.Pressures[row - 1];
            var before = row > 1 && !series.OverRange[row - 2] ? series.Pressures[row - 2] : series.Pressures[row - 1];
            for (var i = row; i < Math.Min(row + 3, series.Count); i++)
            {
                if (series.Times[i] > to || series.OverRange[i] || series.Pressures[i] >= least || series.Pressures[i] >= (1 - SuddenShare) * before)
                    return false;
            }

            return row + 2 < series.Count;
        }
    }
}
