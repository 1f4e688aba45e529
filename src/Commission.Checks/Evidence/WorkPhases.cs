using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Messages;

namespace Commission.Checks.Evidence;

/// <summary>A step of the work with the times that are written for it.</summary>
/// <param name="Name">Which step.</param>
/// <param name="Times">Its times.</param>
internal sealed record WorkPhase(Message Name, ImmutableArray<(Message Name, Given<JobTime> Time)> Times)
{
    /// <summary>The first time of day; null when none is written.</summary>
    public (Message Name, Given<JobTime> Time)? First => Clocked.Count == 0 ? null : Clocked.MinBy(t => t.Time.Value.Clock);

    /// <summary>The last time of day.</summary>
    public (Message Name, Given<JobTime> Time)? Last => Clocked.Count == 0 ? null : Clocked.MaxBy(t => t.Time.Value.Clock);

    /// <summary>The step with its times.</summary>
    public Message Words => First is { } first && Last is { } last && first.Time.Value.Clock != last.Time.Value.Clock
        ? EvidenceMessages.StepFromTo(Name, Moment(first.Time), Moment(last.Time))
        : First is { } only ? EvidenceMessages.StepAt(Name, Moment(only.Time)) : Name;

    private List<(Message Name, Given<JobTime> Time)> Clocked => [.. Times.Where(t => t.Time.Value.Clock is not null)];

    private static TimeValue Moment(Given<JobTime> time) => TimeValue.At(new TimeOnly(time.Value.Clock!.Value.Hour, time.Value.Clock.Value.Minute));
}

/// <summary>The steps of a job that have to follow each other.</summary>
internal static class WorkPhases
{
    /// <summary>Recovery, pressure test, evacuation, charge: those the job has.</summary>
    public static ImmutableArray<WorkPhase> Of(Job job) => [.. new[] { Recovery(job), PressureTest(job), Evacuation(job), Charge(job) }.OfType<WorkPhase>()];

    /// <summary>The evacuation; null when the job has none.</summary>
    public static WorkPhase? Evacuation(Job job) => job.Evacuation is not { } evacuation ? null : Make(
        EvidenceMessages.StepEvacuation,
        [
            (EvidenceMessages.TimePumpStarted, evacuation.Started),
            .. evacuation.Events.Select(e => (EvidenceMessages.TimeWritten(new(e.What.Text)), (Given<JobTime>?)e.At)),
            .. evacuation.Levels.Select(l => (EvidenceMessages.TimeVacuumRead, (Given<JobTime>?)l.At)),
        ]);

    private static WorkPhase? Recovery(Job job) => job.Recovery is not { } recovery ? null : Make(EvidenceMessages.StepRecovery, [(EvidenceMessages.TimeRecovered, recovery.At)]);

    private static WorkPhase? PressureTest(Job job) => job.PressureTest is not { } test ? null : Make(
        EvidenceMessages.StepPressureTest,
        [
            (EvidenceMessages.TimeTestStarted, test.Started),
            .. test.Stages.Select(s => (EvidenceMessages.TimeStage, s.At)),
            (EvidenceMessages.TimeStrengthTest, test.Strength?.At),
            (EvidenceMessages.TimeHoldStart, test.Tightness?.From?.At),
            .. (test.Tightness?.Readings ?? []).Select(r => (EvidenceMessages.TimeHold, (Given<JobTime>?)r.At)),
            (EvidenceMessages.TimeHoldEnd, test.Tightness?.To?.At),
        ]);

    private static WorkPhase? Charge(Job job) => job.Charging is not { } charging ? null : Make(
        EvidenceMessages.StepCharge,
        [
            .. charging.Scale.Select(s => (EvidenceMessages.TimeWeighed, s.At)),
            (ReadingsMessages.CompressorStarted, charging.CompressorStarted),
            .. charging.Events.Select(e => (EvidenceMessages.TimeChargeChanged, (Given<JobTime>?)e.At)),
            .. charging.Readings.Select(r => (EvidenceMessages.TimeReading, (Given<JobTime>?)r.At)),
        ]);

    private static WorkPhase Make(Message name, IEnumerable<(Message Name, Given<JobTime>? Time)> times) =>
        new(name, [.. times.Where(t => t.Time is not null).Select(t => (t.Name, t.Time!))]);
}
