using Commission.Checks.Tests.Coverage;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.FooledKinds;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.HoldClaim;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>Holds in which water, oil, refrigerant or temperature does what looks like something else. Vapor pressures: Magnus form for ice and water (WMO, from memory).</summary>
internal static class FooledByNature
{
    private const double Micron = SimulatedGauge.Micron;

    public static readonly FooledKind[] Kinds =
    [
        new("frost warming and melting", d =>
        {
            // Ice from −20 °C or so to 0 °C, then 611 Pa until the last of it has melted.
            var begin = d.Uniform(-25, -15);
            var rate = -begin / d.Uniform(500, 900);
            return new(Hold(d, (_, _) => 0, 1200) with { Pressure = t => Ice(Math.Min(begin + rate * t, 0)) }, "speeds up, then stands: ice that warms", [Held, Steady, Passed]);
        }),
        new("frost warming, not yet melting", d =>
        {
            var begin = d.Uniform(-32, -26);
            var rate = d.Uniform(10, 14) / 1500;
            return new(Hold(d, (_, _) => 0, 1500) with { Pressure = t => Ice(begin + rate * t) }, "speeds up: no constant inflow", Held, Steady, Wet, Both);
        }),
        new("water freezing: a plateau at or below 611 Pa", d =>
        {
            var (plateau, constant) = (d.Uniform(300, 611), d.Uniform(40, 150));
            var hold = Hold(d, (_, _) => 0, 1200);
            var level = hold.Level;
            return new(hold with { Pressure = t => level + (plateau - level) * Settled(t, constant) }, "levels off at the pressure of ice or freezing water", [Leak, Held, Passed]);
        }),
        new("freezing water that thaws late in the hold", d =>
        {
            var hold = Hold(d, (_, _) => 0, 1800);
            var level = hold.Level;
            var at = d.Uniform(700, 1100);
            return new(hold with { Pressure = t => level + (400 - level) * Settled(t, 100) + 500 * Settled(t - at, 300) }, "levels off and rises again: ice", [Leak, Held, Passed]);
        }),
        new("oil giving off refrigerant, √t", d =>
        {
            var size = d.Uniform(100, 500);
            return new(Hold(d, (t, l) => size * Math.Sqrt(t / l)), "slows down: oil, water or outgassing", Leak);
        }),
        new("refrigerant boiling out of oil", d =>
        {
            var (fast, slow) = (d.Uniform(60, 200), d.Uniform(200, 500));
            return new(Hold(d, (t, l) => fast * Settled(t, 50) + slow * Settled(t, 0.6 * l)), "slows down", Leak);
        }),
        new("refrigerant left as liquid", d =>
        {
            var at = d.Uniform(30, 120);
            return new(Hold(d, (t, _) => 200_000 * Settled(t - at, 300)), "far above the range within minutes", Good) { Inflow = Rate(1000) };
        }),
        new("power law of a wall pumped for ten minutes", d =>
        {
            var size = d.Uniform(150, 500);
            return new(Hold(d, (t, l) => size * Math.Log(1 + t / 600) / Math.Log(1 + l / 600)), "slows down or cannot tell", Leak);
        }),
        new("elastomers: power of one half", d =>
        {
            var size = d.Uniform(150, 500);
            return new(Hold(d, (t, l) => size * (Math.Sqrt(300 + t) - Math.Sqrt(300)) / (Math.Sqrt(300 + l) - Math.Sqrt(300))), "slows down or cannot tell", Leak);
        }),
        new("logarithm of a surface with many sites", d =>
        {
            var (size, begin) = (d.Uniform(30, 100), d.Uniform(10, 100));
            return new(Hold(d, (t, _) => size * Math.Log(1 + t / begin)), "slows down", Leak);
        }),
        new("two pockets", d =>
        {
            var size = d.Uniform(100, 300);
            return new(Hold(d, (t, l) => size * (Settled(t, 40) + Settled(t, 0.9 * l))), "slows down or cannot tell", Leak);
        }),
        new("leak speeding up behind a shut valve", d =>
        {
            // Air fills the room behind the valve, and the valve lets through in proportion: a parabola.
            var rise = d.Uniform(150, 450);
            var hold = Hold(d, (t, l) => rise * t * t / l / l);
            return new(hold, "speeds up: an inflow that grows", [.. Tight, Steady]) { Inflow = Mean(hold) };
        }),
        new("leak speeding up, third power", d =>
        {
            var rise = d.Uniform(150, 450);
            var hold = Hold(d, (t, l) => rise * Math.Pow(t / l, 3));
            return new(hold, "speeds up", [.. Tight, Steady]) { Inflow = Mean(hold) };
        }),
        new("leak that opens in the last third", d =>
        {
            var rate = d.Uniform(15, 40);
            return new(Hold(d, (t, l) => rate * Past(t, 0.7 * l) / 60), "stood, then rises", Tight) { Inflow = Rate(rate) };
        }),
        new("small leak under much water", d =>
        {
            var (rate, size) = (d.Uniform(8, 20), d.Uniform(500, 1200));
            return new(Hold(d, (t, l) => rate * t / 60 + size * Settled(t, 0.2 * l)), "slows down onto a rise, or cannot tell", Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("leak under slow water", d =>
        {
            var (rate, size) = (d.Uniform(8, 20), d.Uniform(200, 600));
            return new(Hold(d, (t, l) => rate * t / 60 + size * Settled(t, 0.5 * l)), "slows down, or cannot tell", Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("sun warms a dry tight circuit by 15 K", d =>
        {
            var kelvin = d.Uniform(8, 15);
            return new(Hold(d, (_, _) => 0) is var hold ? hold with { Pressure = t => hold.Level * (1 + kelvin / 293 * Math.Min(t / hold.Length, 1)) } : hold, "less than counts, or temperature", Leak);
        }),
        new("temperature there and back", d =>
        {
            var size = d.Uniform(20, 90);
            return new(Hold(d, (t, l) => size * Math.Sin(Math.PI * t / l)), "up and back: temperature", Leak);
        }),
        new("circuit cools and hides a leak", d =>
        {
            // Sorbed water goes back to a wall that cools exponentially.
            var (rate, sorbed) = (d.Uniform(5, 12), d.Uniform(1.0, 1.5));
            return new(Hold(d, (t, l) => rate * t / 60 - sorbed * rate * l / 60 * Settled(t, 0.25 * l)), "falls, then rises", BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("circuit cools, temperatures written", d =>
        {
            var rate = d.Uniform(4, 10);
            return new(Hold(d, (t, l) => rate * t / 60 - 1.3 * rate * l / 60 * Settled(t, 0.3 * l)), "falls, then rises", BoundTooLow) { Inflow = Rate(rate), Evacuation = "  coldest part at end: 62 °F" };
        }),
        new("drier takes up water while a leak comes in", d =>
        {
            var rate = d.Uniform(8, 20);
            return new(Hold(d, (t, _) => rate * t / 60 - 140 * Settled(t, 180)), "falls, then rises", Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("drier in a tight circuit", d =>
        {
            var size = d.Uniform(40, 150);
            return new(Hold(d, (t, _) => -size * Settled(t, 250)), "falls and levels off: sorption or temperature", Leak);
        }),
        new("water at equilibrium warmed by the afternoon", d =>
        {
            // 6 %/K of a plateau reached within the first minutes.
            var (size, kelvin) = (d.Uniform(300, 800), d.Uniform(2, 4));
            var hold = Hold(d, (_, _) => 0);
            var level = hold.Level;
            return new(hold with { Pressure = t => level + size * Micron * Settled(t, 60) * (1 + 0.06 * kelvin * t / hold.Length) }, "slows down; the rest may be warming water", Steady);
        }),
        new("rise that stops at the pressure of the pump's stopped oil", d =>
        {
            var size = d.Uniform(150, 400);
            return new(Hold(d, (t, l) => size * Math.Min(1, t / (0.35 * l))), "rose and stopped", Steady);
        }),
        new("gas let in by a heater's thermostat, in steps", d =>
        {
            var (size, period) = (d.Uniform(25, 60), d.Uniform(150, 300));
            return new(Hold(d, (t, _) => size * Math.Floor(t / period)), "rises in steps", Wet, BoundTooLow) { Inflow = Rate(size * 60 / period) };
        }),
        new("air through a hose that was pushed on, pulsing", d =>
        {
            var (rate, period) = (d.Uniform(10, 30), d.Uniform(90, 200));
            return new(Hold(d, (t, _) => rate / 60 * (t - period / 6.3 * Math.Sin(6.283 * t / period))), "rises", Tight) { Inflow = Rate(rate) * 0.9 };
        }),
    ];

    // What grows is bounded below by its mean over the hold.
    private static double Mean(SimulatedHold hold) => (hold.Pressure(hold.Length) - hold.Level) / hold.Length;

    private static double Ice(double celsius) => 611.15 * Math.Exp(22.452 * celsius / (272.55 + celsius));
}
