using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>The readings of an evacuation, from the log or, without one, from the levels written by hand, on the evacuation's clock.</summary>
internal sealed class VacuumRows
{
    private readonly CheckContext _context;
    private readonly Jobs.Model.Evacuation _evacuation;
    private readonly EvacuationClock _clock;
    private readonly VacuumLevel[] _levels = [];
    private readonly Dictionary<int, Uncertain> _read = [];

    public VacuumRows(CheckContext context, Jobs.Model.Evacuation evacuation, EvacuationClock clock, VacuumGauge gauge)
    {
        _context = context;
        _evacuation = evacuation;
        _clock = clock;
        Gauge = gauge;
        Log = evacuation.Series?.Data;
        if (Log is { } log)
        {
            var offset = clock.Offset(log.Start);
            var times = new double[log.Times.Length];
            for (var i = 0; i < times.Length; i++)
                times[i] = log.Times[i] + offset;
            // What stands at the end of the scale may be any pressure above it.
            var full = gauge.Instrument?.FullScaleSi ?? double.PositiveInfinity;
            Series = VacuumSeries.From(times, log.Values, [.. log.OverRange.Zip(log.Values, (over, value) => over || value >= full)]);
        }
        else
        {
            _levels = [.. evacuation.Levels.Where(l => clock.Seconds(l.At.Value) is not null)];
            Series = VacuumSeries.From([.. _levels.Select(l => clock.Seconds(l.At.Value)!.Value)], [.. _levels.Select(l => l.Pressure.Value.Si)]);
        }
    }

    /// <summary>The log as read; null when the levels were written by hand.</summary>
    public ReadSeries? Log { get; }

    public VacuumGauge Gauge { get; }

    /// <summary>The readings.</summary>
    public VacuumSeries Series { get; }

    /// <summary>Longest time between two rows that is bridged by a straight line, s: levels by hand stand far apart, a log that stops has a gap.</summary>
    public double LongestBridge => Log is null ? double.PositiveInfinity : Math.Max(120, 2.5 * Series.MedianInterval);

    /// <summary>A row with what makes it doubtful.</summary>
    /// <param name="row">Its index in the series; not an over-range row.</param>
    public Uncertain Row(int row)
    {
        if (_read.TryGetValue(row, out var known))
            return known;
        var name = Name(row);
        known = Log is null
            ? _context.Readings.Plain(_context.Present.Text(name), ReadingName.Evacuation, _levels[Series.SourceRows[row]].Pressure, DisplayKind.Vacuum, _evacuation.With).Value
            : Gauge.Reading(name, Series.Pressures[row]);
        _read.Add(row, known);
        return known;
    }

    /// <summary>The pressure at a time, on a straight line between the rows on either side.</summary>
    /// <param name="time">Time, s.</param>
    /// <returns>The pressure; null outside the readings, in a gap, or over range.</returns>
    public Uncertain? At(double time)
    {
        if (Series.PressureAt(time, LongestBridge) is null)
            return null;
        var after = Series.IndexAtOrAfter(time);
        if (Series.Times[after] == time)
            return Row(after);
        var share = (time - Series.Times[after - 1]) / (Series.Times[after] - Series.Times[after - 1]);
        return Row(after - 1) + (share * (Row(after) - Row(after - 1)));
    }

    /// <summary>A row as a reading that a finding names.</summary>
    /// <param name="row">Its index in the series.</param>
    public ReadingUse Use(int row)
    {
        if (Log is null)
        {
            var level = _levels[Series.SourceRows[row]];
            return level.Pressure.Use(_context.Present.Text(Name(row)), Gauge.Id);
        }

        var text = Series.OverRange[row] ? _context.Present.Text(VacuumHoldMessages.ReadingOverRange) : _context.Present.Text(Series.Pressures[row], DisplayKind.Vacuum);
        return new ReadingUse(_context.Present.Text(Name(row)), text, new SourceLocation(Log.File, Log.Rows[Series.SourceRows[row]], 1), Gauge.Id);
    }

    private Message Name(int row) => VacuumHoldMessages.ReadingVacuum(_clock.Time(Series.Times[row]));
}

/// <summary>The gauge that read the evacuation: its step, its accuracy, whether it feels the gas.</summary>
internal sealed class VacuumGauge
{
    private readonly CheckContext _context;
    private readonly double _step;

    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="instrument">The instrument; null when the job names none.</param>
    /// <param name="step">Smallest step that the readings show, Pa, for a gauge whose resolution is not written.</param>
    public VacuumGauge(CheckContext context, UsedInstrument? instrument, double step)
    {
        _context = context;
        _step = step;
        Instrument = instrument;
    }

    /// <summary>The instrument; null when the job names none.</summary>
    public UsedInstrument? Instrument { get; }

    /// <summary>Its name in the job.</summary>
    public string? Id => Instrument?.Id;

    /// <summary>Step at the deepest levels, Pa: stated, else as the readings show it.</summary>
    public double Resolution => ResolutionAt(0);

    /// <summary>Step at a level, Pa.</summary>
    /// <param name="pascals">The level, Pa.</param>
    public double ResolutionAt(double pascals) => Instrument?.ResolutionFor(Dimension.VacuumLevel, pascals) ?? _step;

    /// <summary>Whether its accuracy is written.</summary>
    public bool AccuracyKnown => Instrument?.HalfWidth(0, Dimension.VacuumLevel) is not null;

    /// <summary>Whether it shows other gases than air wrongly. A gauge whose sensor is not written is taken as one that does.</summary>
    public bool FeelsTheGas => Instrument?.Described.Sensor?.Value is not (SensorKind.Capacitance or SensorKind.Piezo);

    /// <summary>What is missing, as a reservation; null when nothing is.</summary>
    public Message? Reservation => Instrument is not { } gauge ? EvacuationMessages.GaugeNotNamed
        : AccuracyKnown ? null
        : EvacuationMessages.GaugeAccuracyNotWritten(new(gauge.Id));

    /// <summary>Its errors around a pressure as the analysis of a hold wants them, half-widths of rectangles.</summary>
    /// <param name="pascals">The pressure, Pa.</param>
    public GaugeCharacter CharacterAt(double pascals)
    {
        if (Instrument is not { } gauge || gauge.HalfWidth(pascals, Dimension.VacuumLevel) is not { } half || gauge.HalfWidth(0, Dimension.VacuumLevel) is not { } zero)
            return new GaugeCharacter(ResolutionAt(pascals), 0, 0);
        // A statement with its own k is as wide as the rectangle of the same standard uncertainty.
        var rectangle = gauge.UncertaintyOfAccuracy * Math.Sqrt(3);
        return new GaugeCharacter(ResolutionAt(pascals), pascals > 0 ? (half - zero) / pascals * rectangle : 0, zero * rectangle);
    }

    /// <summary>A row of a log with what makes it doubtful: the gauge's accuracy, shared by all rows, and one step.</summary>
    /// <param name="name">What was read, with its time.</param>
    /// <param name="pascals">The pressure, Pa.</param>
    public Uncertain Reading(Message name, double pascals)
    {
        var terms = new List<RootTerm>(2);
        if (Instrument?.HalfWidth(pascals, Dimension.VacuumLevel) is { } half)
            terms.AddRange(Instrument.Accuracy(half, ReadingName.Evacuation));
        if (Instrument?.DigitsIncluded != true && ResolutionAt(pascals) is > 0 and var step)
            terms.Add(1.0 * _context.Causes.Enter(RootCause.FromResolution(VacuumHoldMessages.CauseStep(name), CorrectionsMessages.SmallestStep, step), DisplayKind.Vacuum));
        return _context.Scope.Reading(pascals, [.. terms]);
    }
}

/// <summary>What the gauge could see from where it sat, while pumping and after the valve was closed.</summary>
/// <param name="LevelBlock">Why the level at isolation says nothing of the system; null when it does.</param>
/// <param name="LevelReservation">What the level rests on and was not shown; null when nothing.</param>
/// <param name="HoldBlock">Why the hold says nothing of the system; null when it does.</param>
/// <param name="HoldReservation">What the hold rests on and was not shown; null when nothing.</param>
/// <param name="HoldRemark">What was inside the hold beside the system, a sentence; null when nothing.</param>
internal sealed record GaugeView(Message? LevelBlock, Message? LevelReservation, Message? HoldBlock, Message? HoldReservation, Message? HoldRemark)
{
    /// <summary>The view of an evacuation.</summary>
    public static GaugeView Of(Jobs.Model.Evacuation evacuation)
    {
        var closed = evacuation.IsolatedAt?.Value;
        var hoses = closed switch
        {
            IsolationPlace.Manifold => EvacuationMessages.HosesInsideHold,
            IsolationPlace.PumpValve => EvacuationMessages.HosesAndManifoldInsideHold,
            _ => null,
        };
        return evacuation.Gauge?.Value switch
        {
            GaugePlace.AtTheSystem => new GaugeView(null, null, null, null, hoses),
            GaugePlace.OnTheManifold => new GaugeView(
                null,
                EvacuationMessages.GaugeOnManifold,
                closed == IsolationPlace.ValveOnTheServicePort ? EvacuationMessages.GaugeOnManifoldCutOff : null,
                closed is null ? EvacuationMessages.GaugeOnManifoldValveUnknown : null,
                hoses),
            GaugePlace.AtThePump => new GaugeView(
                EvacuationMessages.GaugeAtPump,
                null,
                closed is IsolationPlace.ValveOnTheServicePort or IsolationPlace.Manifold ? EvacuationMessages.GaugeAtPumpCutOff : null,
                closed is null ? EvacuationMessages.GaugeAtPumpValveUnknown : null,
                hoses),
            _ => new GaugeView(null, EvacuationMessages.GaugePlaceNotWritten, null, EvacuationMessages.GaugePlaceNotWritten, hoses),
        };
    }
}
