using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Checks.Circuit;

/// <summary>How long a reading was taken after the start or the last change of charge.</summary>
/// <param name="Standing">Whether that is long enough.</param>
/// <param name="Since">The time; null when it is not known.</param>
/// <param name="After">What it counts from, in words.</param>
/// <param name="Words">The standing in words, without a full stop; empty when settled.</param>
/// <param name="Times">The times it rests on, with their names.</param>
/// <param name="Least">The time asked for.</param>
internal sealed record Settling(RowStanding Standing, Duration? Since, string After, string Words, ImmutableArray<(string Name, Given<JobTime> Time)> Times, Limit? Least) : IChargeGate
{
    /// <inheritdoc/>
    public string? Block => Standing is RowStanding.TooEarly or RowStanding.BeforeChange ? Words : null;

    /// <inheritdoc/>
    public string? Todo => Block is null ? null : "Let the system run on without touching the charge, then read again.";

    /// <inheritdoc/>
    public string? Reservation => Standing == RowStanding.NotKnown ? Words : null;

    /// <summary>Works it out.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="charging">The charging; null for readings taken before any work.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="mode">What the system was doing.</param>
    public static Settling Of(CheckContext context, Charging? charging, Reading reading, OperatingMode mode)
    {
        var least = context.Limits.Find(mode == OperatingMode.Heating ? LimitIds.ChargeHeatingSteady : LimitIds.ChargeStabilisedTime);
        var times = ImmutableArray.CreateBuilder<(string Name, Given<JobTime> Time)>();
        times.Add(("time of the reading", reading.At));
        Duration? since = null;
        var after = "";
        string? changedLater = null;
        foreach (var (name, time, isChange) in Marks(charging))
        {
            times.Add((name, time));
            if (Between(time.Value, reading.At.Value) is not { } passed)
                continue;
            if (passed.Si < 0)
            {
                if (isChange)
                    changedLater = $"the charge was changed at {time.Text}, after the reading at {reading.At.Text}";
                continue;
            }

            if (since is null || passed.Si < since.Value.Si)
                (since, after) = (passed, isChange ? "the last change of charge" : "the start of the compressor");
        }

        if (changedLater is not null)
            return new Settling(RowStanding.BeforeChange, since, after, changedLater, times.ToImmutable(), least);
        if (since is not { } elapsed)
            return new Settling(RowStanding.NotKnown, null, after, "neither the start of the compressor nor the last change of charge has a time", times.ToImmutable(), least);
        var early = least?.Lower is { } lower && elapsed.Si < lower.Si;
        return new Settling(
            early ? RowStanding.TooEarly : RowStanding.Settled,
            elapsed,
            after,
            early ? $"the reading at {reading.At.Text} was taken {context.Present.Text(elapsed.Si, DisplayKind.Duration)} after {after}; at least {least!.Lower!.Text} are asked for" : "",
            times.ToImmutable(),
            least);
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding)
    {
        foreach (var (name, time) in Times)
            finding.Use(name, time);
    }

    private static IEnumerable<(string Name, Given<JobTime> Time, bool IsChange)> Marks(Charging? charging)
    {
        if (charging?.CompressorStarted is { } start)
            yield return ("compressor started", start, false);
        if (charging?.LastChange is { } last)
            yield return ("last change of charge", last, true);
        foreach (var change in charging?.Events ?? [])
        {
            if (change.Added is not null || change.Removed is not null)
                yield return (change.Added is not null ? "charge added at" : "charge removed at", change.At, true);
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
    public string? Block { get; private init; }

    /// <inheritdoc/>
    public string? Todo { get; private init; }

    /// <inheritdoc/>
    public string? Reservation { get; private init; }

    /// <summary>Looks at the compressor and at how it ran.</summary>
    public static RunningCondition Of(CheckContext context, ChargeRow row)
    {
        var fitted = context.Job.Equipment.Compressor;
        var running = row.Running?.Value;
        return (fitted?.Kind.Value, running) switch
        {
            (_, RunningState.ChargingMode) => new RunningCondition(fitted, row),
            (CompressorKind.VariableSpeed, RunningState.Full or RunningState.HighStage or RunningState.Part) => Not(
                $"a variable-speed compressor ran {Words(running.GetValueOrDefault())} and not in the maker's charging mode, so that its readings set no charge",
                "Set the maker's charging or test mode and read again, or weigh the charge in."),
            (CompressorKind.VariableSpeed, _) => Not(
                "it is not shown that the variable-speed compressor was held in the maker's charging mode",
                "Hold it in the maker's charging or test mode, say so with the reading, and read again; or weigh the charge in."),
            (_, RunningState.Part) => Not(
                "the compressor ran at part load",
                "Run it at full load or in high stage and read again."),
            (CompressorKind.Fixed, _) or (_, RunningState.Full or RunningState.HighStage) => new RunningCondition(fitted, row),
            (null, _) => new RunningCondition(fitted, row) { Reservation = "the kind of compressor and how it ran are not written" },
            _ => new RunningCondition(fitted, row) { Reservation = "it is not written that the compressor ran at full load or in high stage" },
        };

        RunningCondition Not(string why, string todo) => new(fitted, row) { Block = why, Todo = todo };
    }

    /// <summary>How a compressor ran, to stand behind "ran".</summary>
    public static string Words(RunningState state) => state switch
    {
        RunningState.Full => "at full load",
        RunningState.HighStage => "in high stage",
        RunningState.ChargingMode => "in its charging mode",
        RunningState.Part => "at part load",
        _ => "in a way nobody knows",
    };

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) =>
        finding.Use("compressor", _compressor?.Kind).Use("running", _row.Running).Use("compressor speed", _row.Speed);
}
