using System.Globalization;
using System.Text;
using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.Coverage;

/// <summary>
/// Holds of 15 to 20 min on a log with a row every 10 s: flat, a steady rise, something that gives off gas towards a plateau, or both. The gas follows the
/// temperature of the system, which moves by up to 1 K (common practice, no source). True is the steady rise, and it is asked for where the
/// program reports one.
/// </summary>
internal static class VacuumJobs
{
    public const string Slope = "vacuum slope";

    private const int Interval = 10;
    private const int Closed = 600;

    public static JobOutcome Run(int seed, ErrorModel model, int job)
    {
        var draws = new Draws(seed, model, job);
        var kit = new FieldKit(draws, model, us: true);
        var display = new Display("micron", Display.Micron, 0, draws.Pick(1.0, 1, 5, 10));
        var gauge = kit.Simple(
            "vacuum", "vacuum gauge", "evacuation",
            draws.Pick(("10 % of reading", 0.1, 0), ("5 % of reading + 5 micron", 0.05, 5 * Display.Micron), ("10 % of reading + 10 micron", 0.1, 10 * Display.Micron)),
            display, 2000 * Display.Micron);
        var length = 60 * draws.Whole(15, 20);
        var level = draws.Uniform(150, 500) * Display.Micron;
        var rise = Math.Exp(draws.Uniform(Math.Log(40), Math.Log(1200))) * Display.Micron;
        var truth = draws.Pick("line", "line", "line", "line and source", "source", "flat");
        var slope = truth is "line" or "line and source" ? rise / length : 0;
        var constant = draws.Uniform(60, 0.4 * length);
        var step = truth is "source" or "line and source" ? draws.Uniform(40, 500) * Display.Micron : 0;
        var drift = draws.Either();
        // The repeatability of a row: wander of a thermal gauge, from row to row alike by half (assumed).
        var noise = Math.Exp(draws.Uniform(Math.Log(0.3), Math.Log(4))) * Display.Micron;
        var wander = noise * draws.Normal();
        var log = new StringBuilder("time (s),vacuum (micron)\n");
        for (var t = 0; t <= Closed + length; t += Interval)
        {
            var held = t - Closed;
            var p = held <= 0 ? level + 20_000 * Display.Micron * Math.Exp(-t / 60.0) : level + slope * held + step * (1 - Math.Exp(-held / constant));
            p *= 1 + drift / 293.15 * Math.Max(held, 0) / length;
            wander = 0.5 * wander + Math.Sqrt(0.75) * noise * draws.Normal();
            log.Append(CultureInfo.InvariantCulture, $"{t},{display.Number(Math.Max(0, display.Rounded(gauge.Of.Quiet("system", p) + wander)) / display.Factor)}\n");
        }

        var yaml = $$$"""
            commission: 1
            units: us
            job: {id: V-{{{job}}}, work: new installation, date: 2026-07-14, site: {name: 12 Reed Close, elevation: 0 m}}
            equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: TXV}
            instruments:
              - {{{gauge.Line.Replace("kind: vacuum gauge", "kind: vacuum gauge, sensor: thermal", StringComparison.Ordinal)}}}
            evacuation:
              section: line set and indoor
              gauge: at the system
              isolated at: valve on the service port
              started: "09:00"
              series: {file: log.csv}
              events:
                - {at: {{{Closed / 60}}} min, what: isolated}
            """;
        var run = JobText.Context(yaml, ("log.csv", log.ToString())).Get<EvacuationRun>();
        if (run is not { Slope: { } y, Hold.Conclusion: HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource })
            return new JobOutcome([], []);
        return new JobOutcome(
            [CircuitJobs.Of(Slope, slope, y, [("true rise over the hold, Pa", slope * length), ("level at isolation, Pa", level), ("wander, Pa", noise)], [("truth", truth), ("said", run.Hold.Conclusion.ToString()), ("step, micron", display.Step.ToString(CultureInfo.InvariantCulture)), ("gauge is", gauge.Accuracy)])],
            []);
    }
}
