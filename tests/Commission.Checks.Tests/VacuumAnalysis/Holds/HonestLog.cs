using System.Globalization;
using System.Text;
using Commission.Checks.Tests.Coverage;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>
/// The log of an honest crew: pull-downs with up to three breaks and an isolated hold, on one of many gauges and loggers. Nobody copied, invented or
/// touched anything; digits, sample-and-hold displays, averages and dropped rows are the instruments' own.
/// </summary>
/// <param name="Gauge">The gauge in words.</param>
/// <param name="Logger">The logger in words.</param>
/// <param name="Yaml">The job.</param>
/// <param name="Csv">The log.</param>
/// <param name="Calm">Whether the hold stays half below its limit, logged densely enough: then it is to be judged, and passes.</param>
internal sealed record HonestLog(string Gauge, string Logger, string Yaml, string Csv, bool Calm)
{
    private const double Micron = SimulatedGauge.Micron;

    /// <summary>The loggers.</summary>
    public static readonly string[] Loggers = ["each row", "display held between samples", "means", "drops rows", "on change", "whole seconds", "three digits", "minute means", "starts with the hold"];

    /// <summary>
    /// Draws log number i; gauges and loggers in turn. A pull-down is a pump that empties (an exponential), then walls that give off gas with 1/t (O'Hanlon, from
    /// memory); breaks go to nitrogen above atmosphere, out of the gauge's range; in a hold a small source or nothing comes, and the pressures even out
    /// within half a minute, up or down.
    /// </summary>
    public static HonestLog Draw(int seed, int number)
    {
        var draws = HoldDraws.Of(seed, number);
        var gauge = SimulatedGauge.All[number % SimulatedGauge.All.Length];
        var logger = Loggers[number % Loggers.Length];
        var breaks = draws.Whole(0, 3);
        var level = draws.Uniform(150, 450) * Micron;
        var length = 60.0 * draws.Pick(12, 15, 20, 30, 60);
        // Breaks: when the pump goes on, when gas comes in; the last pull ends with isolation.
        var pulls = new List<(double From, double To, double Constant)>();
        var events = new StringBuilder();
        var clock = 0.0;
        for (var pull = 0; pull <= breaks; pull++)
        {
            var to = clock + 60 * draws.Whole(12, 30);
            pulls.Add((clock, to, draws.Uniform(35, 75)));
            clock = to;
            if (pull == breaks)
                break;
            var held = draws.Whole(3, 10);
            events.Append(CultureInfo.InvariantCulture, $"    - {{at: {clock / 60:0} min, what: nitrogen break, to: 2 psig, held: {held} min}}\n");
            clock += 60 * held;
            events.Append(CultureInfo.InvariantCulture, $"    - {{at: {clock / 60:0} min, what: pump on}}\n");
        }

        var rise = draws.Chance(0.4) ? 0 : draws.LogUniform(3, 250) * Micron;
        // A thermal gauge settles by up to a twentieth of what it reads (from memory).
        var (constant, even, settles) = (draws.LogUniform(60, 0.6 * length), draws.Uniform(-30, 80) * Micron, 0.05 * draws.Either());
        double At(double t)
        {
            var since = t - clock;
            if (since >= 0)
                return (level + rise * (1 - Math.Exp(-since / constant)) + even * (1 - Math.Exp(-since / 12))) * (1 + settles * (1 - Math.Exp(-since / 400)));
            var last = pulls.FindLastIndex(p => p.From <= t);
            var (from, to, empties) = pulls[last];
            if (t > to)
                return 115_000;
            // Earlier pulls end higher; 1/t reaches the level at the end of the pull.
            var end = level * (1 + 0.7 * (pulls.Count - 1 - last));
            return end * (0.5 + 0.55 * (to - from) / (t - from + 0.1 * (to - from))) + 101_325 * Math.Exp(-(t - from) / empties);
        }

        var interval = draws.Pick(1.0, 2, 5, 10, 15, 30);
        if (logger == "minute means")
            interval = 60;
        var noise = (White: draws.LogUniform(0.001, 0.012), Wander: draws.LogUniform(0.001, 0.015), Memory: draws.LogUniform(5, 120));
        var rows = Logged(draws, logger, gauge, interval, Sampled(draws, At, clock + length, noise), clock);
        var step = gauge.StepMicrons(level / Micron);
        var yaml = string.Create(CultureInfo.InvariantCulture, $$$"""
            commission: 1
            units: us
            job: {id: H-{{{number}}}, work: new installation, date: 2026-07-14, site: {name: 12 Reed Close, elevation: 0 m}}
            equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: TXV}
            instruments:
              - {id: vacuum, kind: vacuum gauge, sensor: thermal, accuracy: 10 % of reading, resolution: {{{step}}} micron, full scale: {{{gauge.FullScale}}} micron, reads: [evacuation]}
            evacuation:
              section: line set and indoor
              gauge: at the system
              isolated at: valve on the service port
              coldest part: 72 °F
              started: "09:00"
              series: {file: log.csv}
              events:
            {{{events}}}    - {at: {{{clock / 60:0}}} min, what: isolated}
                - {at: {{{(clock + length) / 60:0}}} min, what: end}
            """);
        return new HonestLog(gauge.Name, logger, yaml, Text(rows), level + rise + Math.Max(even, 0) < 750 * Micron);
    }

    // A sample each second, as the sensor gives it: relative noise, white and wandering.
    private static double[] Sampled(Draws draws, Func<double, double> at, double end, (double White, double Wander, double Memory) noise)
    {
        var samples = new double[(int)end + 1];
        var wander = noise.Wander * draws.Normal();
        var kept = Math.Exp(-1 / noise.Memory);
        for (var i = 0; i < samples.Length; i++)
        {
            wander = kept * wander + Math.Sqrt(1 - kept * kept) * noise.Wander * draws.Normal();
            samples[i] = at(i) * (1 + wander + noise.White * draws.Normal());
        }

        return samples;
    }

    private static List<(double Time, double Pressure, bool Over)> Logged(Draws draws, string logger, SimulatedGauge gauge, double interval, double[] samples, double isolated)
    {
        var rows = new List<(double, double, bool)>();
        var update = logger == "display held between samples" ? draws.Pick(3, 5, 10, 20) : 1;
        var begin = logger == "starts with the hold" ? (int)isolated - 120 : 0;
        var jitter = logger == "whole seconds";
        var last = double.NaN;
        for (double t = begin; t < samples.Length; t += interval)
        {
            if (logger == "drops rows" && draws.Chance(0.08))
                continue;
            var at = Math.Clamp((int)(jitter ? Math.Round(t + draws.Uniform(-0.4, 0.4) * Math.Min(interval, 3)) : t) / update * update, 0, samples.Length - 1);
            var time = jitter ? at : t;
            var p = logger is "means" or "minute means" ? Enumerable.Range(Math.Max(0, at - (int)interval + 1), Math.Min((int)interval, at + 1)).Average(i => samples[i]) : samples[at];
            var over = p > gauge.FullScale * Micron;
            var shown = logger == "three digits" ? ThreeDigits(gauge.Shown(p)) : gauge.Shown(p);
            if (logger == "on change" && !over && shown == last && rows.Count > 0 && time - rows[^1].Item1 < 60)
                continue;
            if (rows.Count > 0 && time <= rows[^1].Item1)
                continue;
            rows.Add((time, shown, over));
            last = shown;
        }

        return rows;
    }

    private static double ThreeDigits(double pascals)
    {
        var micron = pascals / Micron;
        if (micron <= 0)
            return 0;
        var scale = Math.Pow(10, 2 - Math.Floor(Math.Log10(micron)));
        return Math.Round(micron * scale) / scale * Micron;
    }

    private static string Text(List<(double Time, double Pressure, bool Over)> rows)
    {
        var text = new StringBuilder("time (s),vacuum (micron)\n");
        foreach (var (time, pressure, over) in rows)
            text.Append(CultureInfo.InvariantCulture, $"{time:0.###},{(over ? "OL" : (pressure / Micron).ToString("0.##", CultureInfo.InvariantCulture))}\n");
        return text.ToString();
    }
}
