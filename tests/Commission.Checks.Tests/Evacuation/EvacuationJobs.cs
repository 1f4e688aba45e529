using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Records.Findings;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Jobs of the evacuation tests: an invented split at sea level, with whatever a test writes under evacuation, and logs as a gauge writes them.</summary>
internal static class EvacuationJobs
{
    private const int Flicker = 25;

    /// <summary>What most tests write under evacuation beside log and events.</summary>
    public const string Placed = "section: line set and indoor\ngauge: at the system\nisolated at: valve on the service port\nstarted: \"09:00\"";

    private const string Gauge = "sensor: thermal, accuracy: 10 % of reading, resolution: 1 micron";

    /// <summary>A job.</summary>
    /// <param name="evacuation">Lines under evacuation.</param>
    /// <param name="gauge">What is said of the vacuum gauge.</param>
    /// <param name="more">Further parts of the job.</param>
    /// <param name="system">The kind of system.</param>
    public static string Job(string evacuation, string gauge = Gauge, string more = "", string system = "split") => $$$"""
        commission: 1
        units: us
        job: {id: EV-1, work: new installation, date: 2026-06-18, site: {name: "Sedge Row 4", elevation: 0 ft}}
        equipment:
          system: {{{system}}}
          refrigerant: R-32
          metering: TXV
          piping: {liquid: {od: 3/8 in, length: 42 ft}, vapor: {od: 3/4 in, length: 42 ft}}
        instruments:
          - {id: vacuum, kind: vacuum gauge, serial: V-20, {{{gauge}}}, reads: [evacuation]}
        {{{more}}}
        evacuation:
        {{{Indented(evacuation)}}}
        """;

    /// <summary>A log from 0 s on at even steps, in seconds and micron; NaN writes OL.</summary>
    /// <param name="step">Step, s.</param>
    /// <param name="length">Length, s.</param>
    /// <param name="micron">Level at a time, micron.</param>
    /// <param name="skip">Rows the logger missed.</param>
    public static string Log(int step, int length, Func<double, double> micron, Func<double, bool>? skip = null)
    {
        var text = new StringBuilder("time (s),vacuum (micron)\n");
        var before = double.NaN;
        for (var t = 0; t <= length; t += step)
        {
            if (skip?.Invoke(t) == true)
                continue;
            // A gauge that lives moves: where a test draws a level line, its last digit goes down between the times at which tests look.
            var level = micron(t);
            (level, before) = (level.Equals(before) && t % Flicker == 2 * step ? level - 1 : level, level);
            text.Append(CultureInfo.InvariantCulture, $"{t},").Append(double.IsNaN(level) ? "OL" : Math.Round(level).ToString(CultureInfo.InvariantCulture)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A context over a job with a log.</summary>
    /// <param name="yaml">The job.</param>
    /// <param name="log">The log, beside it as log.csv; null for none.</param>
    public static CheckContext Context(string yaml, string? log = null)
    {
        var job = log is null ? JobText.Read(yaml) : JobText.Read(yaml, ("log.csv", log));
        return new CheckContext(job, new CheckSettings(job.Identity.Date.Value));
    }

    /// <summary>The findings of one check.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="yaml">The job.</param>
    /// <param name="log">The log.</param>
    public static ImmutableArray<Finding> All(string check, string yaml, string? log = null) => [.. CheckCatalogue.Find(check)!.Evaluate(Context(yaml, log))];

    /// <summary>The one finding of a check.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="yaml">The job.</param>
    /// <param name="log">The log.</param>
    public static Finding One(string check, string yaml, string? log = null) => Xunit.Assert.Single(All(check, yaml, log));

    /// <summary>Every finding of the evacuation, as the record has it.</summary>
    /// <param name="yaml">The job.</param>
    /// <param name="log">The log.</param>
    public static ImmutableArray<Finding> Phase(string yaml, string? log = null) => [.. RecordBuilder.Evaluate(Context(yaml, log)).Where(f => f.Phase == Phases.Evacuation)];

    private static string Indented(string lines) => string.Join('\n', lines.Split('\n').Select(l => "  " + l));
}
