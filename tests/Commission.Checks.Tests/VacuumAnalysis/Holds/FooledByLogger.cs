using Commission.Checks.Tests.Coverage;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.FooledKinds;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.HoldClaim;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>Holds that a logger, or a hand in its file, told wrongly.</summary>
internal static class FooledByLogger
{
    private const double Micron = SimulatedGauge.Micron;
    private const string Nothing = "the log shows nothing";

    public static readonly FooledKind[] Kinds =
    [
        new("log of zeros", d => new(Leaking(d, 20) with { Logger = rows => [.. rows.Select(r => r with { Pressure = 0, Over = false })] }, Nothing, [.. Anything, LevelPassed]) { Inflow = Rate(20) }),
        new("zeros in the hold", d => new(Leaking(d, 20) with { Logger = rows => [.. rows.Select(r => r.Time > 0 ? r with { Pressure = 0, Over = false } : r)] }, Nothing, Anything) { Inflow = Rate(20) }),
        new("one value in every row", d =>
        {
            var shown = Math.Round(d.Uniform(150, 480)) * Micron;
            return new(Leaking(d, 20) with { Logger = rows => [.. rows.Select(r => r with { Pressure = shown, Over = false })] }, Nothing, [.. Anything, LevelPassed]) { Inflow = Rate(20) };
        }),
        new("a log of one row", d => new(Leaking(d, 20) with { Logger = rows => [rows.First(r => r.Time >= 0)] }, Nothing, Anything) { Inflow = Rate(20) }),
        new("a hold of two rows", d => new(Leaking(d, 20) with { Logger = rows => [.. rows.Where(r => r.Time <= 0), rows.First(r => r.Time >= 60)] }, "too few rows", Anything) { Inflow = Rate(20) }),
        new("two values taking turns", d => new(Leaking(d, 20) with { Logger = rows => [.. rows.Select((r, i) => r with { Pressure = (350 + i % 2) * Micron, Over = false })] }, "no pump-down: not this evacuation's log", [.. Anything, LevelPassed]) { Inflow = Rate(20) }),
        new("logger averages five minutes over a leak", d =>
        {
            var rate = d.Uniform(5, 20);
            return new(Leaking(d, rate) with { Logger = rows => Averaged(rows, 300) }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("logger drops six of ten rows over a leak", d =>
        {
            var rate = d.Uniform(5, 20);
            return new(Leaking(d, rate) with { Logger = rows => [.. rows.Where(_ => d.Chance(0.4))] }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("logger repeats each value ten times, tight", d =>
        {
            return new(Leaking(d, 0) with { White = 4 * Micron, Logger = rows => [.. rows.Select((r, i) => rows[i / 10 * 10] with { Time = r.Time })] }, "stood, or cannot tell", [Leak, Wet]);
        }),
        new("logger repeats each value ten times over a leak", d =>
        {
            var rate = d.Uniform(4, 10);
            return new(Leaking(d, rate) with { White = 4 * Micron, Logger = rows => [.. rows.Select((r, i) => rows[i / 10 * 10] with { Time = r.Time })] }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("logger restarts its clock in the hold", d =>
        {
            var rate = d.Uniform(15, 30);
            var hold = Leaking(d, rate, late: true);
            return new(hold with { Logger = rows => Restarted(rows, 0.45 * hold.Length) }, "the clock went back: the rest of the hold is lost", Good) { Inflow = Rate(rate) };
        }),
        new("clock jumps ahead by twenty minutes over a leak", d =>
        {
            var rate = d.Uniform(10, 25);
            var hold = Leaking(d, rate);
            return new(hold with { Logger = rows => [.. rows.Select(r => r.Time > hold.Length / 2 ? r with { Time = r.Time + 1200 } : r)] }, "rises, with a gap", Wet) { WrittenEnd = hold.Length + 1200 };
        }),
        new("a flat stretch copied over a leak", d =>
        {
            var rate = d.Uniform(8, 25);
            return new(Leaking(d, rate) with { Logger = Copied }, "a stretch comes back to the digit: copied", Unsuspected) { Inflow = Rate(rate) };
        }),
        new("the pump's last minutes copied into the hold", d =>
        {
            var rate = d.Uniform(15, 40);
            return new(Leaking(d, rate) with { Logger = rows => CopiedFromPump(rows) }, "the hold repeats the pump-down to the digit: copied", Unsuspected) { Inflow = Rate(rate) };
        }),
        new("rows cut out where it rose, pump reopened", d =>
        {
            var rate = d.Uniform(20, 40);
            var hold = Hold(d, (t, l) => t < 0.5 * l ? rate * t / 60 : rate * Past(t, 0.6 * l) / 60);
            return new(hold with { Logger = rows => [.. rows.Where(r => r.Time < 0.45 * hold.Length || r.Time > 0.6 * hold.Length)] }, "lower after the gap than before: the pump was reopened in it", Good) { Inflow = Rate(rate) };
        }),
        new("log cut short before the stated time", d =>
        {
            var rate = d.Uniform(40, 90);
            return new(Leaking(d, rate) with { Logger = rows => [.. rows.Where(r => r.Time < 360)] }, "the log ends before the stated time", Held, Wet, Passed) { Inflow = Rate(rate) };
        }),
        new("values cut off at 500 micron", d =>
        {
            var rate = d.Uniform(30, 60);
            return new(Leaking(d, rate) with { Logger = rows => [.. rows.Select(r => r.Time > 0 ? r with { Pressure = Math.Min(r.Pressure, 500 * Micron), Over = false } : r)] }, "rose steadily and stopped to the digit", [.. Good, PlateauTooLow]) { Inflow = Rate(rate) };
        }),
        new("micron become pascal in mid-hold", d =>
        {
            var rate = d.Uniform(10, 40);
            var hold = Leaking(d, rate);
            return new(hold with { Logger = rows => [.. rows.Select(r => r.Time > 0.5 * hold.Length ? r with { Pressure = Math.Round(r.Pressure) * Micron } : r)] }, "fell to an eighth at once: another unit", Good) { Inflow = Rate(rate) };
        }),
        new("newest row first", d =>
        {
            var rate = d.Uniform(10, 40);
            return new(Leaking(d, rate) with { Logger = rows => [.. Enumerable.Reverse(rows)] }, "refused, or read from its clock", Good) { Inflow = Rate(rate) };
        }),
        new("clock to the minute, rows each ten seconds", d =>
        {
            var rate = d.Uniform(10, 40);
            return new(Leaking(d, rate) with { Logger = rows => [.. rows.Select(r => r with { Time = Math.Floor(r.Time / 60) * 60 })] }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("rows out of order by a buffer", d =>
        {
            var rate = d.Uniform(10, 40);
            return new(Leaking(d, rate) with { Logger = rows => [.. rows.Chunk(6).SelectMany(c => Enumerable.Reverse(c))] }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("wandering clock over a leak", d =>
        {
            var rate = d.Uniform(10, 25);
            return new(Leaking(d, rate) with { Logger = rows => [.. rows.Select(r => r with { Time = r.Time + d.Uniform(-0.4, 0.4) })] }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("log thinned where nothing changes", d =>
        {
            // Writes a row only when the display moves by 20 micron, or once in ten minutes.
            var rate = d.Uniform(10, 30);
            return new(Leaking(d, rate) with { Logger = Thinned }, "rises", Tight) { Inflow = Rate(rate) };
        }),
        new("a hold of another job pasted behind the pump-down", d =>
        {
            // Deep and flat from one row to the next, far below where the pump had come.
            var rate = d.Uniform(20, 40);
            return new(Leaking(d, rate) with { Logger = rows => [.. rows.Select((r, i) => r.Time > 0 ? r with { Pressure = Math.Round(60 + 2 * Math.Sin(i * 1.7)) * Micron, Over = false } : r)] }, "fell at once when the valve was closed: not this hold", Held, Passed, BoundTooLow) { Inflow = Rate(rate) };
        }),
        new("rising numbers made by a spreadsheet", d =>
        {
            // A pump-down that scatters, and from the valve on a straight line to the digit.
            var rise = d.Uniform(20, 60);
            var hold = Leaking(d, 20) with { White = 2 * Micron, Interval = d.Pick(2.0, 5, 10) };
            var level = hold.Level;
            return new(hold with { Logger = rows => [.. rows.Select(r => r.Time > 0 ? r with { Pressure = hold.Gauge.Shown(level + rise * r.Time / hold.Length * Micron), Over = false } : r)] }, "steadier than the gauge had been: not read", Unsuspected) { Inflow = Rate(20) };
        }),
        new("last digits by hand", d =>
        {
            // Typed each half minute by somebody who likes 0 and 5, as coming from a gauge of 1 micron.
            var hold = Leaking(d, 2) with { Interval = 30, White = 4 * Micron };
            return new(hold with { Logger = rows => [.. rows.Select(r => d.Chance(0.85) ? r with { Pressure = Math.Round(r.Pressure / Micron / 5) * 5 * Micron } : r)] }, "nine of ten end in 0 or 5 on a gauge of 1 micron: not this gauge's", Unsuspected);
        }),
        new("first pull-down copied as the second, after a break", d =>
        {
            var hold = Leaking(d, 3) with { PumpDown = 2400, Interval = d.Pick(2.0, 5, 10) };
            var level = hold.Level;
            double Pull(double t) => level + 20_000 * Micron * Math.Exp(-t / 80);
            var fooled = new FooledHold(hold with
            {
                Pumping = t => t < -1320 ? Pull(t + 2400) : t < -1080 ? 115_000 : Pull(t + 1080),
                Logger = rows =>
                {
                    var first = rows.Where(r => r.Time < -1320).ToArray();
                    var begin = rows.FindIndex(r => r.Time >= -1080);
                    return [.. rows.Select((r, i) => i >= begin && i - begin < first.Length && r.Time < 0 ? first[i - begin] with { Time = r.Time } : r)];
                },
            }, "the second pull-down is the first to the digit: copied", Unsuspected);
            return fooled with { Events = $"    - {{at: {fooled.Minutes(-1320)}, what: nitrogen break, to: 2 psig, held: 4 min}}\n    - {{at: {fooled.Minutes(-1080)}, what: pump on}}\n" };
        }),
        new("falling numbers made by a spreadsheet", d =>
        {
            var hold = Leaking(d, 20) with { White = 2 * Micron };
            var level = hold.Level;
            return new(hold with { Logger = rows => [.. rows.Select(r => r.Time > 0 ? r with { Pressure = hold.Gauge.Shown(level - 0.02 * r.Time * Micron), Over = false } : r)] }, "steadier than the gauge had been, and falls without a cause: not read", Unsuspected) { Inflow = Rate(20) };
        }),
    ];

    private static SimulatedHold Leaking(Draws draws, double micronPerMinute, bool late = false) =>
        Hold(draws, (t, l) => micronPerMinute * (late ? Past(t, 0.4 * l) : t) / 60);

    private static List<LogRow> Averaged(List<LogRow> rows, double period) =>
        [.. rows.GroupBy(r => Math.Floor(r.Time / period)).Select(g => new LogRow(g.Last().Time, Math.Round(g.Average(r => r.Pressure) / Micron) * Micron))];

    private static List<LogRow> Restarted(List<LogRow> rows, double at)
    {
        var begin = rows[0].Time;
        return [.. rows.Select(r => r.Time > at ? r with { Time = r.Time - at + begin } : r)];
    }

    private static List<LogRow> Copied(List<LogRow> rows)
    {
        var hold = rows.Where(r => r.Time >= 0).ToArray();
        var stretch = hold.Take(Math.Max(20, hold.Length / 4)).ToArray();
        return [.. rows.Where(r => r.Time < 0), .. hold.Select((r, i) => stretch[i % stretch.Length] with { Time = r.Time })];
    }

    private static List<LogRow> CopiedFromPump(List<LogRow> rows)
    {
        var hold = rows.Where(r => r.Time >= 0).ToArray();
        var before = rows.Where(r => r.Time < 0).TakeLast(hold.Length).ToArray();
        return [.. rows.Where(r => r.Time < 0), .. hold.Select((r, i) => before[i % before.Length] with { Time = r.Time })];
    }

    private static List<LogRow> Thinned(List<LogRow> rows)
    {
        var kept = new List<LogRow> { rows[0] };
        foreach (var row in rows)
        {
            if (Math.Abs(row.Pressure - kept[^1].Pressure) >= 20 * Micron || row.Time - kept[^1].Time >= 600)
                kept.Add(row);
        }

        return kept;
    }
}
