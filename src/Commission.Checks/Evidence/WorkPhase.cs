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
