using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>One number of the circuit through the last minutes before the judged reading.</summary>
/// <param name="Change">Change over the window by a straight line, K, with the doubt of its slope.</param>
/// <param name="Low">Lowest value beside the line, at the level of its middle, K.</param>
/// <param name="High">Highest value beside the line, at the level of its middle, K.</param>
/// <param name="Length">How long was looked at, s.</param>
internal sealed record LogCourse(Uncertain Change, double Low, double High, double Length)
{
    /// <summary>Whether it moves by more than a settled system's number does.</summary>
    /// <param name="context">The job's limits.</param>
    public bool IsMoving(CheckContext context) => context.Limits.Find(LimitIds.ChargeStabilisedChange)?.Upper is { } most && Math.Abs(Change.Value) > most.Si;
}

/// <summary>
/// The running circuit through time, from logs of pressures and temperatures: over the last minutes before the judged reading, a straight line
/// through superheat and subcooling says how fast they still move, and what is left beside the line how far they swing. Two readings by hand can
/// tell neither. A log of the power says whether the compressor ran through.
/// </summary>
internal sealed class RunningLog : IAnalysis<RunningLog>
{
    /// <summary>What is looked at before the judged reading, s (common practice, no source).</summary>
    public const double Window = 10 * 60;

    // Shorter than this nothing is said; means of so many seconds take a sensor's noise out and leave a valve's swing of a minute or more in.
    private const double Least = 5 * 60;
    private const double Mean = 10;
    private const int LeastMeans = 20;

    // A compressor that stands leaves fan and board: less than this share of the most that was drawn (common practice, no source).
    private const double Standing = 0.25;

    private RunningLog()
    {
    }

    /// <summary>Superheat; null without logs that reach so far.</summary>
    public LogCourse? Superheat { get; private init; }

    /// <summary>Subcooling; null without logs that reach so far.</summary>
    public LogCourse? Subcooling { get; private init; }

    /// <summary>Whether the power shows that the compressor stopped in the window; null without a log of it.</summary>
    public bool? Stopped { get; private init; }

    /// <summary>The logs, as a finding names them.</summary>
    public ImmutableArray<ReadingUse> Uses { get; private init; } = [];

    /// <inheritdoc/>
    public static RunningLog Create(CheckContext context)
    {
        if (context.Job.Charging?.Logs is not { } logs || context.Get<ChargeAnalysis>().Spoken(OperatingMode.Cooling, r => r.HasCircuitReading) is not { Settling.Block: null } row)
            return new RunningLog();
        var line = logs.EvaporatorOutlet ?? logs.VaporLine;
        var uses = new List<ReadingUse>();
        Name(CircuitMessages.LogVaporPressure, logs.VaporPressure);
        Name(CircuitMessages.LogVaporLine, line);
        Name(CircuitMessages.LogLiquidPressure, logs.LiquidPressure);
        Name(CircuitMessages.LogLiquidLine, logs.LiquidLine);
        Name(CircuitMessages.LogPower, logs.Power);
        return new RunningLog
        {
            Superheat = Course(context, row, CircuitMessages.Superheat, logs.VaporPressure, line, (fluid, p) => fluid.Fast.DewTemperature(p), 1),
            Subcooling = Course(context, row, CircuitMessages.Subcooling, logs.LiquidPressure, logs.LiquidLine, (fluid, p) => fluid.Fast.BubbleTemperature(p), -1),
            Stopped = logs.Power?.Data is { } power ? HasStopped(context, row, power) : null,
            Uses = [.. uses],
        };

        void Name(Message name, LogFile? log)
        {
            if (log?.Data is not null)
                uses.Add(log.File.Use(context.Present.Text(name)));
        }
    }

    // The line above or below saturation: sign +1 for superheat, −1 for subcooling.
    private static LogCourse? Course(CheckContext context, ChargeRow row, Message what, LogFile? pressure, LogFile? line, Func<Refrigerant, double, FluidResult<double>> saturation, int sign)
    {
        if (pressure?.Data is not { UnitIsGuessed: false } low || line?.Data is not { } warm || context.Get<CircuitRefrigerant>().Fluid is not { } fluid)
            return null;
        var (start, end) = Span(context, low, row);
        var air = UnitTable.Find(low.Unit, Dimension.Pressure)?.Reference == PressureReference.Absolute ? 0 : context.Get<SiteAtmosphere>().Value.Value;
        var shift = warm.Start is { } a && low.Start is { } b ? (b - a).TotalSeconds : 0;
        var times = new List<double>();
        var values = new List<double>();
        for (var t = start; t + Mean <= end + 1e-6; t += Mean)
        {
            if (MeanOf(low, t, t + Mean) is not { } p || MeanOf(warm, t + shift, t + shift + Mean) is not { } kelvin || saturation(fluid, p + air) is not { Ok: true, Value: var saturated })
                continue;
            times.Add(t + (Mean / 2));
            values.Add(sign * (kelvin - saturated));
        }

        return times.Count < LeastMeans || times[^1] - times[0] < Least - Mean ? null : Of(context, what, times, values);
    }

    private static LogCourse Of(CheckContext context, Message what, List<double> times, List<double> values)
    {
        var n = times.Count;
        var (middle, mean) = (times.Average(), values.Average());
        var squares = times.Sum(t => (t - middle) * (t - middle));
        var slope = times.Select((t, i) => (t - middle) * (values[i] - mean)).Sum() / squares;
        var beside = times.Select((t, i) => values[i] - mean - (slope * (t - middle))).ToArray();
        var length = times[^1] - times[0];
        var scatter = Math.Sqrt(beside.Sum(r => r * r) / (n - 2) / squares) * length;
        var cause = context.Causes.Enter(RootCause.FromExpanded(CircuitMessages.ScatterInLog(what), CircuitMessages.ScatterInLogSource, 2 * scatter, 2), DisplayKind.TemperatureDifference);
        return new LogCourse(context.Scope.Reading(slope * length, 1.0 * cause), mean + beside.Min(), mean + beside.Max(), length);
    }

    private static bool? HasStopped(CheckContext context, ChargeRow row, ReadSeries power)
    {
        var (start, end) = Span(context, power, row);
        var means = new List<double>();
        for (var t = start; t + Mean <= end + 1e-6; t += Mean)
        {
            if (MeanOf(power, t, t + Mean) is { } watts)
                means.Add(watts);
        }

        return means.Count == 0 ? null : means.Min() < Standing * means.Max();
    }

    // The last minutes before the judged reading, on the clock of the log; to its end where one of the two has no clock.
    private static (double Start, double End) Span(CheckContext context, ReadSeries log, ChargeRow row)
    {
        var last = log.Times[^1];
        var end = log.Start is { } began && row.Written.At.Value.Clock is { } read && (read - began).TotalSeconds is var at && at > log.Times[0] ? Math.Min(at, last) : last;
        // What lies before the system had settled moves for other reasons.
        var settled = row.Settling.Since is { } since && context.Limits.Find(LimitIds.ChargeStabilisedTime)?.Lower is { } wait ? end - Math.Max(0, since.Si - wait.Si) : log.Times[0];
        return (Math.Max(Math.Max(end - Window, settled), log.Times[0]), end);
    }

    private static double? MeanOf(ReadSeries log, double from, double to)
    {
        var i = log.Times.BinarySearch(from);
        if (i < 0)
            i = ~i;
        var (sum, count) = (0.0, 0);
        for (; i < log.Times.Length && log.Times[i] < to; i++)
        {
            if (!double.IsFinite(log.Values[i]))
                continue;
            sum += log.Values[i];
            count++;
        }

        return count == 0 ? null : sum / count;
    }
}

/// <summary>
/// Whether a log shows the circuit still moving at the judged reading, or its compressor stopped shortly before. Two readings a minute apart may stand
/// alike in a house that still cools down: a number that is on its way somewhere says nothing of the charge, wherever it happens to lie.
/// </summary>
internal sealed class LogDrift : IChargeGate
{
    private readonly ImmutableArray<ReadingUse> _logs;

    private LogDrift(ImmutableArray<ReadingUse> logs) => _logs = logs;

    /// <inheritdoc/>
    public Message? Block { get; private init; }

    /// <inheritdoc/>
    public Message? Todo { get; private init; }

    /// <inheritdoc/>
    public Message? Reservation => null;

    /// <summary>Looks at the logs; null where there are none that reach far enough, and where superheat swings.</summary>
    public static LogDrift? Of(CheckContext context)
    {
        // A line through a swing leans by where in the swing it begins and ends.
        if (context.Get<RunningLog>() is not { Uses.IsEmpty: false } log || Hunting.In(context) is not null)
            return null;
        var why = log switch
        {
            { Stopped: true } => ChargeMessages.LogStopped,
            { Superheat: { } superheat } when superheat.IsMoving(context) => ChargeMessages.LogSuperheatMoving,
            { Subcooling: { } subcooling } when subcooling.IsMoving(context) => ChargeMessages.LogSubcoolingMoving,
            _ => (Message?)null,
        };
        return why is null ? new LogDrift(log.Uses) : new LogDrift(log.Uses) { Block = why, Todo = ChargeMessages.LogStillMovingNext };
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var use in _logs)
            finding.Use(use);
    }
}
