using System.Globalization;
using System.Text;
using Commission.Checks.Formulas;
using Commission.Checks.Tests.Coverage;
using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>A row of a log: seconds since isolation, pressure as displayed in Pa, whether the gauge was above its range.</summary>
internal readonly record struct LogRow(double Time, double Pressure, bool Over = false);

/// <summary>A vacuum gauge as it displays: its step may depend on the level. Steps and ranges as data sheets give them (common practice, no source).</summary>
/// <param name="Name">Its steps in words.</param>
/// <param name="StepMicrons">Step of the display at a level, both in micron.</param>
/// <param name="FullScale">Highest level it shows, micron.</param>
internal sealed record SimulatedGauge(string Name, Func<double, double> StepMicrons, double FullScale = 25_000)
{
    public const double Micron = 0.133322368421;

    /// <summary>Steps of 0.1, 1, 5 and 10 micron, and steps by range.</summary>
    public static readonly SimulatedGauge[] All =
    [
        new("0.1 micron", _ => 0.1),
        new("1 micron", _ => 1),
        new("5 micron", _ => 5),
        new("10 micron", _ => 10),
        new("1 below 1000, 10 above", p => p < 1000 ? 1 : p < 10_000 ? 10 : 100),
        new("0.1 below 100, 1 below 1000, 10 above", p => p < 100 ? 0.1 : p < 1000 ? 1 : 10),
        new("1 below 400, 5 below 1000, 50 above", p => p < 400 ? 1 : p < 1000 ? 5 : p < 2000 ? 50 : 500),
    ];

    public static SimulatedGauge Fine => All[1];

    public static SimulatedGauge ByRange => All[4];

    /// <summary>What is displayed, Pa; above the full scale that itself.</summary>
    public double Shown(double pascals)
    {
        var micron = Math.Clamp(pascals / Micron, 0, FullScale);
        var step = StepMicrons(micron);
        return Math.Round(micron / step) * step * Micron;
    }

    /// <summary>Step at a level, Pa.</summary>
    public double StepAt(double pascals) => StepMicrons(pascals / Micron) * Micron;
}

/// <summary>
/// What an isolated system does and how a gauge and its logger tell of it. The noise of a row is white (electronics, digits) plus a wander
/// that forgets itself exponentially, a first-order autoregression (sensor bridge, air around it); both from memory.
/// </summary>
internal sealed record SimulatedHold
{
    /// <summary>True pressure, Pa, at a time since isolation, s, ≥ 0.</summary>
    public required Func<double, double> Pressure { get; init; }

    /// <summary>Pressure while the pump pulls, Pa, at a time &lt; 0; by default an exponential onto the level at isolation.</summary>
    public Func<double, double>? Pumping { get; init; }

    /// <summary>What the sensor makes of a pressure before noise and digits: a gain, a warming, an offset. Time, pressure → Pa.</summary>
    public Func<double, double, double>? Sensor { get; init; }

    public double PumpDown { get; init; } = 900;

    public required double Length { get; init; }

    public double Interval { get; init; } = 5;

    public SimulatedGauge Gauge { get; init; } = SimulatedGauge.Fine;

    /// <summary>Standard deviation of the white part, Pa.</summary>
    public double White { get; init; } = 0.1;

    /// <summary>Standard deviation, Pa, and memory, s, of the wandering part.</summary>
    public double Wander { get; init; }

    public double Memory { get; init; } = 30;

    /// <summary>What the logger makes of the rows that it should have written.</summary>
    public Func<List<LogRow>, List<LogRow>>? Logger { get; init; }

    public double Level => Pressure(0);

    /// <summary>The rows as they are logged.</summary>
    public List<LogRow> Rows(Draws draws)
    {
        var rows = new List<LogRow>();
        var wander = Wander * draws.Normal();
        var kept = Memory > 0 ? Math.Exp(-Interval / Memory) : 0;
        var before = (int)(PumpDown / Interval);
        var after = (int)(Length / Interval);
        for (var i = -before; i <= after; i++)
        {
            var t = i * Interval;
            wander = kept * wander + Math.Sqrt(1 - kept * kept) * Wander * draws.Normal();
            var p = t >= 0 ? Pressure(t) : Pumping?.Invoke(t) ?? PullDown(t);
            p = (Sensor?.Invoke(t, p) ?? p) + wander + White * draws.Normal();
            rows.Add(new LogRow(t, Gauge.Shown(Math.Max(p, 0)), p > Gauge.FullScale * SimulatedGauge.Micron));
        }

        return Logger?.Invoke(rows) ?? rows;
    }

    /// <summary>The rows as the analysis takes them.</summary>
    public static VacuumSeries Series(List<LogRow> rows) => VacuumSeries.From([.. rows.Select(r => r.Time)], [.. rows.Select(r => r.Pressure)], [.. rows.Select(r => r.Over)]);

    /// <summary>The rows as a CSV file whose clock begins with the pump.</summary>
    public string Csv(List<LogRow> rows)
    {
        var text = new StringBuilder("time (s),vacuum (micron)\n");
        foreach (var row in rows)
            text.Append(CultureInfo.InvariantCulture, $"{row.Time + PumpDown:0.###},{(row.Over ? "OL" : (row.Pressure / SimulatedGauge.Micron).ToString("0.##", CultureInfo.InvariantCulture))}\n");
        return text.ToString();
    }

    /// <summary>Time after which the decay limit is judged, s.</summary>
    public const double JudgedAfter = 600;

    /// <summary>Analyses it directly, without a job.</summary>
    /// <param name="draws">The noise.</param>
    /// <param name="limit">The decay limit, Pa.</param>
    public HoldResult Analyze(Draws draws, double limit)
    {
        var rows = Rows(draws);
        var begun = Math.Min(Level, limit);
        return HoldAnalysis.Analyze(Series(rows), 0, Length, new GaugeCharacter(Gauge.StepAt(Level), 0.1, 0), new HoldOptions(limit - begun) { AllowedAfter = JudgedAfter, Pumped = PumpDown });
    }

    // Conductance-limited pull-down from ambient dryness: a fast exponential onto what holds the level (from memory).
    private double PullDown(double t) => Level + 20_000 * SimulatedGauge.Micron * Math.Exp(-(t + PumpDown) / (PumpDown / 12));
}

/// <summary>Draws over decades.</summary>
internal static class HoldDraws
{
    public static Draws Of(int seed, int number) => new(seed, ErrorModel.Offset, number);

    public static double LogUniform(this Draws draws, double low, double high) => low * Math.Pow(high / low, draws.Uniform(0, 1));
}
