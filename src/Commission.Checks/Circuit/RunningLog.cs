using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>
/// Superheat through time, from logs of vapor pressure and line: over the last minutes before the judged reading, a straight line through it
/// says how fast it still moves, and what is left beside the line how far it swings. Two readings by hand can tell neither.
/// </summary>
internal sealed class RunningLog : IAnalysis<RunningLog>
{
    /// <summary>What is looked at before the judged reading, s (common practice, no source).</summary>
    public const double Window = 10 * 60;

    // Shorter than this nothing is said; means of so many seconds take a sensor's noise out and leave a valve's swing of a minute or more in.
    private const double Least = 5 * 60;
    private const double Mean = 10;
    private const int LeastMeans = 20;

    private RunningLog()
    {
    }

    /// <summary>Change of superheat over the window by the straight line, K, with the doubt of its slope; null without a log that reaches so far.</summary>
    public Uncertain? Change { get; private init; }

    /// <summary>Lowest superheat beside the line, at the level of its middle, K.</summary>
    public double Low { get; private init; }

    /// <summary>Highest superheat beside the line, at the level of its middle, K.</summary>
    public double High { get; private init; }

    /// <summary>How long the log was looked at, s.</summary>
    public double Length { get; private init; }

    /// <summary>The logs, as a finding names them.</summary>
    public ImmutableArray<ReadingUse> Uses { get; private init; } = [];

    /// <inheritdoc/>
    public static RunningLog Create(CheckContext context)
    {
        var charge = context.Get<ChargeAnalysis>();
        if (context.Job.Charging?.Logs is not { VaporPressure: { Data: { UnitIsGuessed: false } low } pressure } logs || (logs.EvaporatorOutlet ?? logs.VaporLine) is not { Data: { } warm } line
            || charge.Spoken(OperatingMode.Cooling, r => r.HasCircuitReading) is not { Settling.Block: null } row || context.Get<CircuitRefrigerant>().Fluid is not { } fluid)
        {
            return new RunningLog();
        }

        var uses = ImmutableArray.Create(pressure.File.Use("log of the vapor pressure"), line.File.Use("log of the line"));
        var (start, end) = Span(context, low, row);
        var air = UnitTable.Find(low.Unit, Dimension.Pressure)?.Reference == PressureReference.Absolute ? 0 : context.Get<SiteAtmosphere>().Value.Value;
        var shift = warm.Start is { } a && low.Start is { } b ? (b - a).TotalSeconds : 0;
        var times = new List<double>();
        var superheats = new List<double>();
        for (var t = start; t + Mean <= end + 1e-6; t += Mean)
        {
            if (MeanOf(low, t, t + Mean) is not { } p || MeanOf(warm, t + shift, t + shift + Mean) is not { } kelvin || fluid.DewAtPressure(p + air) is not { Ok: true, Value: var dew })
                continue;
            times.Add(t + (Mean / 2));
            superheats.Add(kelvin - dew.Temperature);
        }

        return times.Count < LeastMeans || times[^1] - times[0] < Least - Mean ? new RunningLog { Uses = uses } : Of(context, times, superheats, uses);
    }

    private static RunningLog Of(CheckContext context, List<double> times, List<double> superheats, ImmutableArray<ReadingUse> uses)
    {
        var n = times.Count;
        var (middle, mean) = (times.Average(), superheats.Average());
        var squares = times.Sum(t => (t - middle) * (t - middle));
        var slope = times.Select((t, i) => (t - middle) * (superheats[i] - mean)).Sum() / squares;
        var beside = times.Select((t, i) => superheats[i] - mean - (slope * (t - middle))).ToArray();
        var length = times[^1] - times[0];
        var scatter = Math.Sqrt(beside.Sum(r => r * r) / (n - 2) / squares) * length;
        var cause = context.Causes.Enter(RootCause.FromExpanded("scatter of the log", "standard deviation of the slope of a straight line", 2 * scatter, 2), DisplayKind.TemperatureDifference);
        return new RunningLog
        {
            Change = context.Scope.Reading(slope * length, 1.0 * cause),
            Low = mean + beside.Min(),
            High = mean + beside.Max(),
            Length = length,
            Uses = uses,
        };
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
/// Whether the log shows superheat still moving at the judged reading. Two readings a minute apart may stand alike in a house that still cools down:
/// a number that is on its way somewhere says nothing of the charge, wherever it happens to lie.
/// </summary>
internal sealed class LogDrift : IChargeGate
{
    private readonly ImmutableArray<ReadingUse> _logs;

    private LogDrift(ImmutableArray<ReadingUse> logs) => _logs = logs;

    /// <inheritdoc/>
    public string? Block { get; private init; }

    /// <inheritdoc/>
    public string? Todo { get; private init; }

    /// <inheritdoc/>
    public string? Reservation => null;

    /// <summary>Looks at the log; null where there is none that reaches far enough.</summary>
    public static LogDrift? Of(CheckContext context)
    {
        // A line through a swing leans by where in the swing it begins and ends.
        if (Hunting.In(context) is not null || context.Get<RunningLog>() is not { Change: { } moved } log || context.Limits.Find(LimitIds.ChargeStabilisedChange)?.Upper is not { } most)
            return null;
        return Math.Abs(moved.Value) <= most.Si
            ? new LogDrift(log.Uses)
            : new LogDrift(log.Uses) { Block = context.Present.Text(ChargeMessages.LogStillMoving), Todo = context.Present.Text(ChargeMessages.LogStillMovingNext) };
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var use in _logs)
            finding.Use(use);
    }
}
