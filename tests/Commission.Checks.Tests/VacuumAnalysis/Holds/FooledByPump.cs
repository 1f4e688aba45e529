using Commission.Checks.Tests.Coverage;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.FooledKinds;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.HoldClaim;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>Holds in which somebody touched pump or valves, or a valve did not shut.</summary>
internal static class FooledByPump
{
    private const string Reopened = "the pressure fell while shut off: the pump was reopened or a valve passes; not a hold";

    public static readonly FooledKind[] Kinds =
    [
        new("pump reopened once", d =>
        {
            var (rate, at) = (d.Uniform(12, 40), d.Uniform(0.4, 0.7));
            return new(Hold(d, (t, l) => t < at * l ? rate * t / 60 : rate * at * l / 60 * Math.Exp(-(t - at * l) / 30)), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump reopened once, then the same rise again", d =>
        {
            var (rate, at) = (d.Uniform(8, 25), d.Uniform(0.3, 0.6));
            return new(Hold(d, (t, l) => t < at * l ? rate * t / 60 : rate * at * l / 60 * Math.Exp(-(t - at * l) / 25) + rate * Past(t, at * l + 90) / 60), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump reopened several times", d =>
        {
            var (rate, period) = (d.Uniform(10, 40), d.Uniform(180, 420));
            return new(Hold(d, (t, _) => t % period < period - 40 ? rate * (t % period) / 60 : rate * (period - 40) / 60 * Math.Exp(-(t % period - period + 40) / 10)), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump reopened slowly, valve cracked", d =>
        {
            var (rate, at) = (d.Uniform(15, 40), d.Uniform(0.3, 0.5));
            return new(Hold(d, (t, l) => t < at * l ? rate * t / 60 : rate * at * l / 60 * Math.Exp(-(t - at * l) / 240)), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump reopened in the last minutes", d =>
        {
            var rate = d.Uniform(15, 40);
            return new(Hold(d, (t, l) => t < l - 120 ? rate * t / 60 : rate * (l - 120) / 60 * Math.Exp(-(t - l + 120) / 30)), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump reopened two minutes after isolation", d =>
        {
            var rate = d.Uniform(40, 150);
            return new(Hold(d, (t, _) => t < 120 ? rate * t / 60 : rate * 2 * Math.Exp(-(t - 120) / 30)), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump reopened for seconds just before the stated time", d =>
        {
            var rate = d.Uniform(60, 110);
            return new(Hold(d, (t, _) => t < 540 ? rate * t / 60 : t < 600 ? rate * 9 * Math.Exp(-(t - 540) / 15) : rate * (t - 600) / 60, 900), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump cracked open every few minutes, small teeth", d =>
        {
            var (rate, period) = (d.Uniform(5, 9), d.Uniform(150, 240));
            return new(Hold(d, (t, _) => t % period < period - 20 ? rate * (t % period) / 60 : rate * (period - 20) / 60 * (1 - (t % period - period + 20) / 20)), "teeth: rises and is pulled down again", Held, Wet, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("above the range, then pump reopened", d =>
        {
            var (rate, at) = (d.Uniform(8000, 20_000), d.Uniform(0.3, 0.5));
            return new(Hold(d, (t, l) => t < at * l ? rate * t / 60 : rate * at * l / 60 * Math.Exp(-(t - at * l) / 30)), Reopened, Good) { Inflow = Rate(rate) };
        }),
        new("pump reopened, a written cooling that cannot explain it", d =>
        {
            var (rate, at) = (d.Uniform(20, 40), d.Uniform(0.4, 0.6));
            return new(Hold(d, (t, l) => t < at * l ? rate * t / 60 : rate * at * l / 60 * Math.Exp(-(t - at * l) / 45)), "10 K take away a thirtieth of a gas, not half", Good) { Inflow = Rate(rate), Evacuation = "  coldest part at end: 54 °F" };
        }),
        new("end of the first hold not written, pumped again, second hold good", d =>
        {
            // The crew writes one isolation and one end around both.
            var rate = d.Uniform(30, 50);
            return new(Hold(d, (t, l) => t < 0.3 * l ? rate * t / 60 : t < 0.6 * l ? rate * 0.3 * l / 60 * Math.Exp(-(t - 0.3 * l) / 60) : 2 * Past(t, 0.6 * l) / 60, 2400), "two holds with the pump between them; judged as one it is none", Good) { Inflow = Rate(rate) };
        }),
        new("held for four minutes only", d =>
        {
            var rate = d.Uniform(10, 80);
            return new(Hold(d, (t, _) => rate * t / 60, 240), "too short for the limit", Passed, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("isolation not written, a leak", d =>
        {
            var rate = d.Uniform(10, 30);
            return new(Hold(d, (t, _) => rate * t / 60), "rises, if the moment of isolation is to be seen", Tight) { Inflow = Rate(rate), IsWritten = false };
        }),
        new("851 to 292 micron within minutes", d =>
        {
            var at = d.Uniform(300, 600);
            return new(Hold(d, (t, _) => t < at ? 560 * Settled(t, 120) : 560 * Math.Exp(-(t - at) / 60)), Reopened, Good) { Inflow = Rate(60) };
        }),
        new("valve never closed, still pulling down", d =>
        {
            var (above, constant) = (d.Uniform(150, 500), d.Uniform(300, 900));
            return new(Hold(d, (t, _) => -120 + above * Math.Exp(-t / constant)), "still falling: the pump was not shut off", Good) { Inflow = Rate(20) };
        }),
        new("isolation written five minutes too early", d =>
        {
            var rate = d.Uniform(8, 25);
            var hold = Hold(d, (t, _) => t < 300 ? 250 * Math.Exp(-t / 120) : 250 * Math.Exp(-2.5) + rate * (t - 300) / 60);
            return new(hold, "fell for five minutes, then rises: closed later than written; not a hold from the written time", Good) { Inflow = Rate(rate) };
        }),
        new("valve passes to the running pump", d =>
        {
            var (leak, constant) = (d.Uniform(6, 20), d.Uniform(200, 500));
            var fall = 40 + leak * constant / 240;
            return new(Hold(d, (t, _) => -fall * Settled(t, constant)), "falls while shut off: a valve passes to the pump", Good) { Inflow = Rate(leak) };
        }),
        new("valve begins to pass to the running pump", d =>
        {
            var (rate, at) = (d.Uniform(10, 30), d.Uniform(0.25, 0.5));
            return new(Hold(d, (t, l) => rate * Math.Min(t, at * l) / 60 * (1 - 0.7 * Settled(t - at * l, 200))), "rose, then fell: a valve passes to the pump", Good) { Inflow = Rate(rate) };
        }),
        new("pump stopped, air back through the open valve", d =>
        {
            var at = d.Uniform(200, 500);
            return new(Hold(d, (t, _) => 4 * t / 60 + 9000 * Settled(t - at, 40)), "the pressure broke through: an open valve", Good) { Inflow = Rate(400) };
        }),
        new("manifold opened to a hose at higher pressure", d =>
        {
            var (step, at) = (d.Uniform(60, 250), d.Uniform(0.35, 0.7));
            return new(Hold(d, (t, l) => t < at * l ? 0 : step), "one step within seconds: gas let in, not a leak", Leak);
        }),
        new("valve with trapped gas bursts once", d =>
        {
            var (step, at) = (d.Uniform(80, 400), d.Uniform(0.3, 0.8));
            return new(Hold(d, (t, l) => t < at * l ? 0 : step * Settled(t - at * l, 8)), "one step: gas trapped in a valve", Leak);
        }),
        new("trapped gas bursts three times", d =>
        {
            var step = d.Uniform(50, 150);
            return new(Hold(d, (t, l) => step * (Settled(t - 0.2 * l, 5) + Settled(t - 0.45 * l, 5) + Settled(t - 0.75 * l, 5))), "three steps: trapped gas or something moved; not a constant inflow", Leak);
        }),
        new("gas out of a ball valve's cavity right after closing", d =>
        {
            var (size, constant) = (d.Uniform(60, 200), d.Uniform(20, 50));
            return new(Hold(d, (t, _) => size * Settled(t, constant)), "evened out within minutes, then stood", Leak);
        }),
        new("hold before the far end has evened out, rising", d =>
        {
            var (size, constant) = (d.Uniform(100, 400), d.Uniform(100, 250));
            return new(Hold(d, (t, _) => size * Settled(t, constant)), "levelled off: pressures evening out, trapped gas, water or oil", Leak);
        }),
        new("hold before the far end has evened out, falling, with a leak", d =>
        {
            var (size, rate) = (d.Uniform(100, 250), d.Uniform(6, 20));
            return new(Hold(d, (t, _) => size * Math.Exp(-t / 150) + rate * t / 60), "fell, then rises", BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("two chambers through a closed expansion valve", d =>
        {
            var size = d.Uniform(150, 400);
            return new(Hold(d, (t, l) => size * (0.4 * Settled(t, 60) + 0.6 * Settled(t, 0.5 * l))), "slows down: a part of the circuit evens out through a narrow way", Leak);
        }),
        new("vacuum broken inside the hold, not written", d =>
        {
            var at = d.Uniform(250, 500);
            return new(Hold(d, (t, _) => t < at ? 15 * t / 60 : t < at + 120 ? 30_000 * Settled(t - at, 10) : 30_000 * Math.Exp(-(t - at - 120) / 60)), "broken and pumped again inside the hold", [.. Good, Steady]) { Inflow = Rate(15) };
        }),
        new("break written, none in the log", d =>
        {
            var hold = Hold(d, (t, _) => 3 * Settled(t, 100));
            var fooled = new FooledHold(hold, "the break that the job writes is not in the log: not this circuit's log", Held, Passed, Wet, Steady);
            return fooled with { Events = $"    - {{at: {fooled.Minutes(-0.5 * hold.PumpDown)}, what: nitrogen break, to: 2 psig, held: 10 min}}\n" };
        }),
        new("leak through a valve core once the tool is off", d =>
        {
            var (rate, at) = (d.Uniform(8, 30), d.Uniform(0.4, 0.7));
            return new(Hold(d, (t, l) => rate * Past(t, at * l) / 60), "stood, then rises from one moment on", Tight) { Inflow = Rate(rate) };
        }),
        new("bumped hose that leaks afterwards", d =>
        {
            var (rate, at) = (d.Uniform(8, 30), d.Uniform(0.3, 0.6));
            return new(Hold(d, (t, l) => (t >= at * l && t < at * l + 15 ? 300 : 0) + rate * Past(t, at * l) / 60), "a jolt, then a rise", Tight) { Inflow = Rate(rate) };
        }),
        new("bumped hose, tight again", d =>
        {
            var (size, at) = (d.Uniform(100, 400), d.Uniform(0.2, 0.8));
            return new(Hold(d, (t, l) => t < at * l ? 0 : size * Math.Exp(-(t - at * l) / 25)), "a jolt and back", Leak);
        }),
        new("leak plugged in the hold", d =>
        {
            var (rate, at) = (d.Uniform(12, 30), d.Uniform(0.4, 0.7));
            return new(Hold(d, (t, l) => rate * Math.Min(t, at * l) / 60), "rose and stopped: something was closed", Steady, BoundTooLow) { Inflow = Rate(rate) };
        }),
    ];
}
