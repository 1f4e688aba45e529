using System.Collections.Immutable;
using Commission.Jobs.Model;

namespace Commission.Checks.Evidence;

/// <summary>A step of the work with the times that are written for it.</summary>
/// <param name="Name">Which step.</param>
/// <param name="Times">Its times.</param>
internal sealed record WorkPhase(string Name, ImmutableArray<(string Name, Given<JobTime> Time)> Times)
{
    /// <summary>The first time of day; null when none is written.</summary>
    public (string Name, Given<JobTime> Time)? First => Clocked.Count == 0 ? null : Clocked.MinBy(t => t.Time.Value.Clock);

    /// <summary>The last time of day.</summary>
    public (string Name, Given<JobTime> Time)? Last => Clocked.Count == 0 ? null : Clocked.MaxBy(t => t.Time.Value.Clock);

    /// <summary>The step with its times in words.</summary>
    public string Words => First is { } first && Last is { } last && first.Time.Value.Clock != last.Time.Value.Clock
        ? $"{Name} {Moment(first.Time)} to {Moment(last.Time)}"
        : First is { } only ? $"{Name} {Moment(only.Time)}" : Name;

    private List<(string Name, Given<JobTime> Time)> Clocked => [.. Times.Where(t => t.Time.Value.Clock is not null)];

    private static string Moment(Given<JobTime> time) => time.Value.Clock!.Value.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>The steps of a job that have to follow each other.</summary>
internal static class WorkPhases
{
    /// <summary>Recovery, pressure test, evacuation, charge: those the job has.</summary>
    public static ImmutableArray<WorkPhase> Of(Job job) => [.. new[] { Recovery(job), PressureTest(job), Evacuation(job), Charge(job) }.OfType<WorkPhase>()];

    /// <summary>The evacuation; null when the job has none.</summary>
    public static WorkPhase? Evacuation(Job job) => job.Evacuation is not { } evacuation ? null : Make(
        "evacuation",
        [
            ("pump started", evacuation.Started),
            .. evacuation.Events.Select(e => (e.What.Text, (Given<JobTime>?)e.At)),
            .. evacuation.Levels.Select(l => ("vacuum read", (Given<JobTime>?)l.At)),
        ]);

    private static WorkPhase? Recovery(Job job) => job.Recovery is not { } recovery ? null : Make("recovery", [("recovered", recovery.At)]);

    private static WorkPhase? PressureTest(Job job) => job.PressureTest is not { } test ? null : Make(
        "pressure test",
        [
            ("test started", test.Started),
            .. test.Stages.Select(s => ("stage", s.At)),
            ("strength test", test.Strength?.At),
            ("hold, start", test.Tightness?.From?.At),
            .. (test.Tightness?.Readings ?? []).Select(r => ("hold", (Given<JobTime>?)r.At)),
            ("hold, end", test.Tightness?.To?.At),
        ]);

    private static WorkPhase? Charge(Job job) => job.Charging is not { } charging ? null : Make(
        "charge",
        [
            .. charging.Scale.Select(s => ("weighed", s.At)),
            ("compressor started", charging.CompressorStarted),
            .. charging.Events.Select(e => ("charge changed", (Given<JobTime>?)e.At)),
            .. charging.Readings.Select(r => ("reading", (Given<JobTime>?)r.At)),
        ]);

    private static WorkPhase Make(string name, IEnumerable<(string Name, Given<JobTime>? Time)> times) =>
        new(name, [.. times.Where(t => t.Time is not null).Select(t => (t.Name, t.Time!))]);
}
