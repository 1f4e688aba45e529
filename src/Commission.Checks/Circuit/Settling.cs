using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Checks.Circuit;

/// <summary>How long a reading was taken after the start or the last change of charge.</summary>
/// <param name="Standing">Whether that is long enough.</param>
/// <param name="Since">The time; null when it is not known.</param>
/// <param name="SinceChange">Whether it counts from a change of charge, and not from the start.</param>
/// <param name="Words">The standing in words, without a full stop; null when settled.</param>
/// <param name="Times">The times it rests on, with their names.</param>
/// <param name="Least">The time asked for.</param>
internal sealed record Settling(RowStanding Standing, Duration? Since, bool SinceChange, Message? Words, ImmutableArray<(Message Name, Given<JobTime> Time)> Times, Limit? Least) : IChargeGate
{
    /// <inheritdoc/>
    public Message? Block => Standing is RowStanding.TooEarly or RowStanding.BeforeChange ? Words : null;

    /// <inheritdoc/>
    public Message? Todo => Block is null ? null : CircuitMessages.LetItRun;

    /// <inheritdoc/>
    public Message? Reservation => Standing == RowStanding.NotKnown ? Words : null;

    /// <summary>Works it out.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="charging">The charging; null for readings taken before any work.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="mode">What the system was doing.</param>
    public static Settling Of(CheckContext context, Charging? charging, Reading reading, OperatingMode mode)
    {
        var least = context.Limits.Find(mode == OperatingMode.Heating ? LimitIds.ChargeHeatingSteady : LimitIds.ChargeStabilisedTime);
        var times = ImmutableArray.CreateBuilder<(Message Name, Given<JobTime> Time)>();
        times.Add((CircuitMessages.TimeOfReading, reading.At));
        Duration? since = null;
        var sinceChange = false;
        Message? changedLater = null;
        foreach (var (name, time, isChange) in Marks(charging))
        {
            times.Add((name, time));
            if (Between(time.Value, reading.At.Value) is not { } passed)
                continue;
            if (passed.Si < 0)
            {
                if (isChange)
                    changedLater = CircuitMessages.ChangedAfter(new(time.Text), new(reading.At.Text));
                continue;
            }

            if (since is null || passed.Si < since.Value.Si)
                (since, sinceChange) = (passed, isChange);
        }

        if (changedLater is not null)
            return new Settling(RowStanding.BeforeChange, since, sinceChange, changedLater, times.ToImmutable(), least);
        if (since is not { } elapsed)
            return new Settling(RowStanding.NotKnown, null, sinceChange, CircuitMessages.NoStartNoChange, times.ToImmutable(), least);
        var early = least?.Lower is { } lower && elapsed.Si < lower.Si;
        return new Settling(
            early ? RowStanding.TooEarly : RowStanding.Settled,
            elapsed,
            sinceChange,
            early ? CircuitMessages.TooEarly(new(reading.At.Text), context.Present.InMessage(elapsed.Si, DisplayKind.Duration), new(least!.Lower!.Text), sinceChange ? CircuitMessages.TooEarlySince.Change : CircuitMessages.TooEarlySince.Start) : null,
            times.ToImmutable(),
            least);
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var (name, time) in Times)
            finding.Use(name, time);
    }

    private static IEnumerable<(Message Name, Given<JobTime> Time, bool IsChange)> Marks(Charging? charging)
    {
        if (charging?.CompressorStarted is { } start)
            yield return (ReadingsMessages.CompressorStarted, start, false);
        if (charging?.LastChange is { } last)
            yield return (CircuitMessages.LastChange, last, true);
        foreach (var change in charging?.Events ?? [])
        {
            if (change.Added is not null || change.Removed is not null)
                yield return (change.Added is not null ? CircuitMessages.ChargeAddedAt : CircuitMessages.ChargeRemovedAt, change.At, true);
        }
    }

    private static Duration? Between(JobTime from, JobTime to) => (from.Clock, to.Clock, from.Elapsed, to.Elapsed) switch
    {
        ({ } a, { } b, _, _) => Duration.FromSi((b - a).TotalSeconds),
        (_, _, { } a, { } b) => Duration.FromSi(b.Si - a.Si),
        _ => null,
    };
}

/// <summary>Whether the compressor ran in a way in which superheat and subcooling say something of the charge.</summary>
internal sealed class RunningCondition : IChargeGate
{
    private readonly Compressor? _compressor;
    private readonly ChargeRow _row;

    private RunningCondition(Compressor? compressor, ChargeRow row)
    {
        _compressor = compressor;
        _row = row;
    }

    /// <inheritdoc/>
    public Message? Block { get; private init; }

    /// <inheritdoc/>
    public Message? Todo { get; private init; }

    /// <inheritdoc/>
    public Message? Reservation { get; private init; }

    /// <summary>Looks at the compressor and at how it ran.</summary>
    public static RunningCondition Of(CheckContext context, ChargeRow row)
    {
        var fitted = context.Job.Equipment.Compressor;
        var running = row.Running?.Value;
        return (fitted?.Kind.Value, running) switch
        {
            (_, RunningState.ChargingMode) => new RunningCondition(fitted, row),
            (CompressorKind.VariableSpeed, RunningState.Full or RunningState.HighStage or RunningState.Part) => Not(
                CircuitMessages.NotInChargingMode(running switch
                {
                    RunningState.Full => CircuitMessages.NotInChargingModeState.Full,
                    RunningState.HighStage => CircuitMessages.NotInChargingModeState.HighStage,
                    _ => CircuitMessages.NotInChargingModeState.Part,
                }),
                CircuitMessages.NotInChargingModeNext),
            (CompressorKind.VariableSpeed, _) => Not(
                CircuitMessages.ChargingModeNotShown,
                CircuitMessages.ChargingModeNotShownNext),
            (_, RunningState.Part) => Not(
                CircuitMessages.PartLoad,
                CircuitMessages.PartLoadNext),
            (CompressorKind.Fixed, _) or (_, RunningState.Full or RunningState.HighStage) => new RunningCondition(fitted, row),
            (null, _) => new RunningCondition(fitted, row) { Reservation = CircuitMessages.RunningNotWritten },
            _ => new RunningCondition(fitted, row) { Reservation = CircuitMessages.FullLoadNotWritten },
        };

        RunningCondition Not(Message why, Message todo) => new(fitted, row) { Block = why, Todo = todo };
    }

    /// <summary>How a compressor ran, to stand behind "ran".</summary>
    public static Message Words(RunningState state) => CircuitMessages.Ran(state switch
    {
        RunningState.Full => CircuitMessages.RanState.Full,
        RunningState.HighStage => CircuitMessages.RanState.HighStage,
        RunningState.ChargingMode => CircuitMessages.RanState.ChargingMode,
        RunningState.Part => CircuitMessages.RanState.Part,
        _ => CircuitMessages.RanState.Unknown,
    });

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) =>
        finding.Use(ReadingsMessages.Compressor, _compressor?.Kind).Use(CircuitMessages.Running, _row.Running).Use(CircuitMessages.CompressorSpeed, _row.Speed);
}
