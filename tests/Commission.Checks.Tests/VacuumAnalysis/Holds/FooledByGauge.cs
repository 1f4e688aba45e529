using Commission.Checks.Tests.Coverage;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.FooledKinds;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.HoldClaim;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>Holds that a gauge told wrongly.</summary>
internal static class FooledByGauge
{
    private const double Micron = SimulatedGauge.Micron;
    private const string Still = "the display never moved: it shows nothing";

    public static readonly FooledKind[] Kinds =
    [
        new("gauge warms up and hides a leak", d =>
        {
            var rate = d.Uniform(3, 8);
            var hold = Hold(d, (t, _) => rate * t / 60);
            var constant = hold.Length * d.Uniform(0.3, 0.8);
            var size = rate * hold.Length / 60 * Micron * d.Uniform(1, 1.4);
            return new(hold with { Sensor = (t, p) => p - size * Settled(t, constant) }, "falls, then rises: the gauge settles, and a rise may hide", BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("gauge warms up and shows a rise", d =>
        {
            var (size, share) = (d.Uniform(80, 250) * Micron, d.Uniform(0.15, 0.4));
            var hold = Hold(d, (_, _) => 0);
            return new(hold with { Sensor = (t, p) => p + size * Settled(t, share * hold.Length) }, "levels off: the gauge settling, water or oil", Leak);
        }),
        new("sun on the gauge, then a cloud", d =>
        {
            var size = d.Uniform(60, 200) * Micron;
            var hold = Hold(d, (_, _) => 0);
            return new(hold with { Sensor = (t, p) => p + size * (Settled(t - 0.1 * hold.Length, 200) - Settled(t - 0.55 * hold.Length, 200)) }, "up and down again: drift", Leak);
        }),
        new("shade falls on a gauge in the sun and hides a leak", d =>
        {
            var rate = d.Uniform(5, 15);
            var hold = Hold(d, (t, _) => rate * t / 60);
            var at = d.Uniform(0.2, 0.5) * hold.Length;
            return new(hold with { Sensor = (t, p) => p * (1 - 0.35 * Settled(t - at, 250)) }, "rose, fell, rises: drift over a rise", Held, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("shade: the display sinks slowly over a leak", d =>
        {
            var rate = d.Uniform(3, 6);
            var hold = Hold(d, (t, _) => rate * t / 60);
            return new(hold with { Sensor = (t, p) => p - 1.6 * Rate(rate) * Math.Max(0, t) }, "falls: drift, and a rise may hide", Held, Passed, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("display freezes in the hold", d =>
        {
            var (rate, share) = (d.Uniform(10, 40), d.Uniform(0.1, 0.4));
            var hold = Hold(d, (t, _) => rate * t / 60);
            return new(hold with { Logger = rows => Frozen(rows, share * hold.Length, double.PositiveInfinity) }, "stood still to the digit from one moment on: frozen", Good) { Inflow = Rate(rate) };
        }),
        new("display freezes at isolation", d =>
        {
            var rate = d.Uniform(10, 60);
            return new(Hold(d, (t, _) => rate * t / 60) with { Logger = rows => Frozen(rows, -5, double.PositiveInfinity) }, Still, Anything) { Inflow = Rate(rate) };
        }),
        new("display that never moves, pump-down and hold", d =>
        {
            var hold = Hold(d, (t, _) => 20 * t / 60);
            var shown = Math.Round(d.Uniform(200, 450)) * Micron;
            return new(hold with { Logger = rows => [.. rows.Select(r => r with { Pressure = shown, Over = false })] }, Still, [.. Anything, LevelPassed]) { Inflow = Rate(20) };
        }),
        new("fine display that never moves in a hold of a hundred rows", d =>
        {
            var hold = Hold(d, (_, _) => 0) with { Gauge = SimulatedGauge.All[d.Whole(0, 1)], Interval = d.Pick(1.0, 2, 5) };
            return new(hold with { Logger = rows => Frozen(rows, 0, double.PositiveInfinity) }, Still, Held, Steady, Wet, Both, Passed);
        }),
        new("display freezes for minutes and catches up", d =>
        {
            var (rate, period) = (d.Uniform(10, 30), d.Uniform(120, 300));
            return new(Hold(d, (t, _) => rate * t / 60) with { Logger = rows => Held10(rows, period) }, "a rise in steps", Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("display freezes at the level of isolation, then follows again", d =>
        {
            var (rate, share) = (d.Uniform(30, 60), d.Uniform(0.5, 0.9));
            var hold = Hold(d, (t, _) => rate * t / 60);
            return new(hold with { Logger = rows => Frozen(rows, 0, share * hold.Length) }, "stood still to the digit, then jumped: frozen", Held, Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("range jump over a leak", d =>
        {
            var (rate, up) = (d.Uniform(8, 25), d.Uniform(0.05, 0.15));
            var hold = Hold(d, (t, _) => rate * t / 60);
            var edge = hold.Level + Rate(rate) * hold.Length * d.Uniform(0.3, 0.7);
            return new(hold with { Sensor = (_, p) => p > edge ? p * (1 + up) : p }, "rises, with a jump between ranges", Tight) { Inflow = Rate(rate) };
        }),
        new("range jump downwards over a leak", d =>
        {
            var rate = d.Uniform(8, 25);
            var hold = Hold(d, (t, _) => rate * t / 60);
            var edge = hold.Level + Rate(rate) * hold.Length * d.Uniform(0.3, 0.7);
            return new(hold with { Sensor = (_, p) => p > edge ? p * 0.9 : p }, "rises, with a jump between ranges", Tight) { Inflow = Rate(rate) };
        }),
        new("range jump of a tight system", d =>
        {
            var hold = Hold(d, (t, l) => 12 * t / l);
            var edge = hold.Level + 6 * Micron;
            return new(hold with { Sensor = (_, p) => p > edge ? p * 1.12 : p, White = 0.3 * Micron, Wander = 0 }, "stood, with one jump between ranges", Leak);
        }),
        new("1 micron below 1000 and 10 above, leak", d =>
        {
            var rate = d.Uniform(25, 60);
            return new(Hold(d, (t, _) => 300 + rate * t / 60) with { Gauge = SimulatedGauge.ByRange }, "rises steadily", Tight) { Inflow = Rate(rate) };
        }),
        new("1 micron below 1000 and 10 above, wet", d =>
        {
            var size = d.Uniform(900, 1800);
            return new(Hold(d, (t, l) => size * Settled(t, 0.15 * l)) with { Gauge = SimulatedGauge.ByRange }, "slows down", [Leak, Held, Passed]);
        }),
        new("5 and 50 micron by range, noisy, leak", d =>
        {
            var rate = d.Uniform(40, 80);
            return new(Hold(d, (t, _) => 400 + rate * t / 60) with { Gauge = SimulatedGauge.All[6], White = 8 * Micron }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("gauge at full scale after a leak", d =>
        {
            var rate = d.Uniform(100, 250);
            var gauge = SimulatedGauge.Fine with { FullScale = 2000 };
            return new(Hold(d, (t, _) => rate * t / 60) with { Gauge = gauge, Logger = rows => [.. rows.Select(r => r with { Over = false })] }, "rose above the gauge's range", [.. Good, PlateauTooLow]) { Inflow = Rate(rate) };
        }),
        new("gauge at full scale below the decay limit", d =>
        {
            var rate = d.Uniform(60, 150);
            var gauge = SimulatedGauge.Fine with { FullScale = 800 };
            return new(Hold(d, (t, _) => rate * t / 60) with { Gauge = gauge, Logger = rows => [.. rows.Select(r => r with { Over = false })] }, "rose above the gauge's range", [.. Good, PlateauTooLow]) { Inflow = Rate(rate) };
        }),
        new("gauge at full scale, written smaller than it is", d =>
        {
            // Saturates at 1500 without saying so: a plateau to the digit is no plateau of water.
            var rate = d.Uniform(80, 160);
            return new(Hold(d, (t, _) => rate * t / 60) with { Sensor = (_, p) => Math.Min(p, 1500 * Micron), White = 0, Wander = 0 }, "rose steadily and stopped to the digit", [.. Good, PlateauTooLow]) { Inflow = Rate(rate) };
        }),
        new("gauge at the bottom of its scale", d =>
        {
            var rate = d.Uniform(1.5, 3);
            var hold = Hold(d, (t, _) => -1000 + rate * t / 60);
            return new(hold with { Pressure = t => (20 + rate * t / 60) * Micron, Logger = rows => [.. rows.Select(r => r with { Pressure = Math.Max(r.Pressure, 100 * Micron) })] }, "the gauge stood at the end of its scale", Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("oil on the sensor: it follows minutes late", d =>
        {
            var (rate, lag) = (d.Uniform(10, 30), d.Uniform(100, 300));
            return new(Hold(d, (t, _) => rate * (t - lag * Settled(t, lag)) / 60), "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("two gauges swapped, lower, over a leak", d =>
        {
            var (rate, off) = (d.Uniform(6, 20), d.Uniform(0.15, 0.3));
            var hold = Hold(d, (t, _) => rate * t / 60);
            var at = d.Uniform(0.4, 0.7) * hold.Length;
            return new(hold with { Sensor = (t, p) => t > at ? p * (1 - off) : p }, "rises, falls at once, rises: another gauge or a valve", [.. Tight, Passed]) { Inflow = Rate(rate) };
        }),
        new("two gauges swapped, tight", d =>
        {
            var off = d.Uniform(0.15, 0.3) * (d.Chance(0.5) ? 1 : -1);
            var hold = Hold(d, (t, l) => 5 * t / l);
            var at = d.Uniform(0.3, 0.7) * hold.Length;
            return new(hold with { Sensor = (t, p) => t > at ? p * (1 + off) : p }, "one jump", Leak);
        }),
        new("failing sensor over a leak", d =>
        {
            var rate = d.Uniform(5, 10);
            return new(Hold(d, (t, _) => rate * t / 60) with { White = 40 * Micron, Wander = 60 * Micron, Memory = 120 }, "wanders too much to tell", BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("battery runs down over a leak", d =>
        {
            var rate = d.Uniform(6, 14);
            var hold = Hold(d, (t, _) => rate * t / 60);
            return new(hold with { Sensor = (t, p) => p - Rate(rate) * 1.5 * Past(t, 0.5 * hold.Length) * Past(t, 0.5 * hold.Length) / hold.Length * 2 }, "rises, bends over, falls: the gauge drifts", Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("pick-up on the lead over a leak", d =>
        {
            var (rate, period) = (d.Uniform(5, 15), d.Uniform(40, 200));
            var hold = Hold(d, (t, _) => rate * t / 60);
            return new(hold with { Sensor = (t, p) => p + 20 * Micron * Math.Sin(2 * Math.PI * t / period) }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("slow swing of a tight system", d =>
        {
            var size = d.Uniform(50, 120);
            return new(Hold(d, (t, l) => size * Math.Sin(2 * Math.PI * t / (0.55 * l))), "swings", Leak);
        }),
        new("spikes in a fifth of the rows over a leak", d =>
        {
            var rate = d.Uniform(5, 20);
            return new(Hold(d, (t, _) => rate * t / 60) with { Logger = rows => [.. rows.Select(r => d.Chance(0.2) && r.Time > 0 ? r with { Pressure = r.Pressure * 1.8 } : r)] }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("gauge that hops between two neighbours", d =>
        {
            // A tight system to the digit of a coarse gauge, a leak within it: no bound below the true inflow.
            var rate = d.Uniform(0.1, 0.4);
            var hold = Hold(d, (t, _) => rate * t / 60) with { Gauge = SimulatedGauge.All[3], White = 6 * Micron };
            return new(hold, "no rise that counts, with a bound", BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("steps of 100 micron over a leak", d =>
        {
            var rate = d.Uniform(2, 4);
            return new(Hold(d, (t, _) => rate * t / 60) with { Gauge = new SimulatedGauge("100 micron", _ => 100) }, "too coarse to tell", BoundTooLow) { Inflow = Rate(rate) };
        }),
    ];

    /// <summary>Rows that repeat the last one before a moment.</summary>
    private static List<LogRow> Frozen(List<LogRow> rows, double from, double to)
    {
        var shown = rows.Last(r => r.Time <= Math.Max(from, rows[0].Time));
        return [.. rows.Select(r => r.Time >= from && r.Time < to ? shown with { Time = r.Time } : r)];
    }

    private static List<LogRow> Held10(List<LogRow> rows, double period)
    {
        var begin = rows[0].Time;
        var shown = rows[0];
        var slot = -1.0;
        return [.. rows.Select(r =>
        {
            if (Math.Floor((r.Time - begin) / period) is var now && now != slot)
                (slot, shown) = (now, r);
            return shown with { Time = r.Time };
        })];
    }
}
