using System.Diagnostics;
using System.Globalization;
using System.Text;
using Commission.Checks.Tests.Evidence;
using Commission.Checks.VacuumAnalysis;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>
/// Does anything fool the analysis of a hold? Holds whose truth is known, drawn from physics and from what goes wrong on a roof, read by the program like any
/// other. What each study draws, and where its physics comes from, stands beside it.
/// </summary>
public sealed class HoldStudies(ITestOutputHelper output)
{
    private const int UsualSeed = 20261130;
    private const int Series = 750;
    private const int LeakFree = 640;
    private const int EachKind = 5;
    private const int Honest = 504;
    private const int HonestByHand = 250;
    private const int MostNumbers = 60;

    // Another seed draws other holds: what was repaired on these has to be right on those.
    private static readonly int Seed = int.TryParse(Environment.GetEnvironmentVariable("COMMISSION_HOLD_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed : UsualSeed;

    /// <summary>The tables that <c>tests/run-long hold</c> commits.</summary>
    [Fact(Explicit = true)]
    public void Table()
    {
        var text = new StringBuilder();
        var clock = Stopwatch.StartNew();
        text.Append(CultureInfo.InvariantCulture, $"Seed {Seed}; each hold has its own numbers from the seed of its study and its number.\n\n");
        OwnTable(text);
        output.WriteLine($"1: {clock.Elapsed.TotalSeconds:0} s");
        OutgassingTable(text);
        output.WriteLine($"2: {clock.Elapsed.TotalSeconds:0} s");
        FooledTable(text);
        output.WriteLine($"3: {clock.Elapsed.TotalSeconds:0} s");
        HonestTable(text);
        output.WriteLine($"4: {clock.Elapsed.TotalSeconds:0} s");
        output.WriteLine(text.ToString());
        if (Environment.GetEnvironmentVariable("COMMISSION_TABLE") is { Length: > 0 } path)
            File.WriteAllText(path, text.ToString());
    }

    /// <summary>One hold of a study, to look into: <c>COMMISSION_HOLD=study:number</c>, as the tables number them.</summary>
    [Fact(Explicit = true)]
    public void One()
    {
        if (Environment.GetEnvironmentVariable("COMMISSION_HOLD")?.Split(':') is not [var study, var which])
            return;
        var number = int.Parse(which, CultureInfo.InvariantCulture);
        SimulatedHold hold;
        int noise;
        switch (study)
        {
            case "1":
                var own = OwnSeries.Draw(Seed, number);
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{own.Kind}, clear {own.IsClear}, inflow {own.Leak * own.Hold.Length / SimulatedGauge.Micron:0} micron over the hold, time constant {own.Constant:0} s, counts from {own.Counting / SimulatedGauge.Micron:0} micron"));
                (hold, noise) = (own.Hold, Seed + 1);
                break;
            case "2":
                var drawn = Outgassing.Draw(Seed + 2, number);
                output.WriteLine($"{drawn.Law}, straight {drawn.IsStraight}");
                (hold, noise) = (drawn.Hold, Seed + 3);
                break;
            case "4":
                var honest = HonestLog.Draw(Seed + 6, number);
                var read = HoldTold.Of(honest.Yaml, ("log.csv", honest.Csv));
                output.WriteLine($"{honest.Gauge}, {honest.Logger}\n{read}\n{read.Refused}\n{honest.Yaml}");
                Findings(read);
                output.WriteLine(honest.Csv);
                return;
            default:
                var kind = FooledKinds.All.Single(k => k.Number == number / 10 * 10);
                var (_, fooled, told, wrong) = kind.Run(EachKind).Single(o => o.Number == number);
                output.WriteLine($"{kind.Name}: may say \"{fooled.May}\", never {string.Join(", ", fooled.Never)}; said {told}; wrong {string.Join(", ", wrong)}\n{told.Refused}\n{fooled.Yaml()}");
                Findings(told);
                (hold, noise) = (fooled.Hold, Seed + 5);
                break;
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{hold.Length:0} s, a row each {hold.Interval} s, {hold.Gauge.Name}, white {hold.White / SimulatedGauge.Micron:0.0}, wander {hold.Wander / SimulatedGauge.Micron:0.0} micron over {hold.Memory:0} s; {hold.Level / SimulatedGauge.Micron:0} to {hold.Pressure(hold.Length) / SimulatedGauge.Micron:0} micron"));
        if (study != "3")
            Analysis(hold.Analyze(HoldDraws.Of(noise, number), OwnSeries.DecayLimit));
        output.WriteLine(hold.Csv([.. hold.Rows(HoldDraws.Of(noise, number)).Where(r => r.Time >= -60)]));
    }

    private void Analysis(HoldResult said)
    {
        output.WriteLine(Words(said));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{said.Rows.Used} rows, ρ {said.Correlation:0.00}, {said.Blocks} blocks; preferred {said.Preferred}; counts from {said.CountingRise / SimulatedGauge.Micron:0}; steady {said.Slope?.Low * said.Length / SimulatedGauge.Micron:0} to {said.Slope?.High * said.Length / SimulatedGauge.Micron:0} micron over the hold; rise seen {said.RiseSeen / SimulatedGauge.Micron:0}, by a source {said.SourceRise / SimulatedGauge.Micron:0}; ΔAICc {string.Join(", ", said.Evidence.Select(e => $"{e.Model} {e.Difference:0.0}"))}"));
    }

    private void Findings(HoldTold told)
    {
        foreach (var finding in told.Findings)
            output.WriteLine($"{finding.Check} {finding.Verdict}: {finding.Statement} {finding.Reason}");
    }

    private static void OwnTable(StringBuilder text)
    {
        var rows = Enumerable.Range(0, Series).Select(i => OwnSeries.Draw(Seed, i)).Select((s, i) => (Number: i, Series: s, Said: s.Hold.Analyze(HoldDraws.Of(Seed + 1, i), s.Limit))).ToArray();
        Line(text, $"## 1 Own series");
        Line(text, $"");
        Line(text, $"Targets: right ≥ 97 % of the clear ones; a leak called tight or merely wet 0; tight called leaking 0.");
        Line(text, $"");
        Line(text, $"| truth | drawn | clear | right of the clear | right of all | leak called tight | leak called merely wet | tight called leaking |");
        Line(text, $"|---|---|---|---|---|---|---|---|");
        foreach (var kind in Enum.GetValues<HoldTruthKind>().Select(k => (HoldTruthKind?)k).Append(null))
        {
            var of = rows.Where(r => kind is null || r.Series.Kind == kind).ToArray();
            var clear = of.Where(r => r.Series.IsClear).ToArray();
            Line(text, $"| {kind?.ToString() ?? "all"} | {of.Length} | {clear.Length} | {Share(clear.Count(r => r.Series.IsRight(r.Said)), clear.Length)} | {Share(of.Count(r => r.Series.IsRight(r.Said)), of.Length)} | {of.Count(r => r.Series.IsCalledTight(r.Said))} | {of.Count(r => r.Series.IsCalledWet(r.Said))} | {of.Count(r => r.Series.IsCalledLeaking(r.Said))} |");
        }

        Line(text, $"");
        Line(text, $"Clear and not right, by what was said instead:");
        Line(text, $"");
        Line(text, $"| truth | said | holds (number) |");
        Line(text, $"|---|---|---|");
        foreach (var group in rows.Where(r => r.Series.IsClear && !r.Series.IsRight(r.Said)).GroupBy(r => (r.Series.Kind, Said: Words(r.Said))).OrderByDescending(g => g.Count()))
            Line(text, $"| {group.Key.Kind} | {group.Key.Said} | {group.Count()}: {Numbers(group.Select(r => r.Number))} |");
        Line(text, $"");
        Line(text, $"Wrong by number: called tight {Numbers(rows.Where(r => r.Series.IsCalledTight(r.Said)).Select(r => r.Number))}; merely wet {Numbers(rows.Where(r => r.Series.IsCalledWet(r.Said)).Select(r => r.Number))}; leaking {Numbers(rows.Where(r => r.Series.IsCalledLeaking(r.Said)).Select(r => r.Number))}.");
        var slopes = rows.Where(r => r.Said.Slope is not null && r.Said.Conclusion != HoldConclusion.CannotTell && r.Series.Kind != HoldTruthKind.Drift).ToArray();
        Line(text, $"The printed interval of the steady part holds the true inflow in {Share(slopes.Count(r => r.Said.Slope!.Value.Covers(r.Series.Leak)), slopes.Length)} of {slopes.Length} conclusions.");
        Line(text, $"");
    }

    private static void OutgassingTable(StringBuilder text)
    {
        var rows = Enumerable.Range(0, LeakFree).Select(i => (Number: i, Drawn: Outgassing.Draw(Seed + 2, i))).Select(r => (r.Number, r.Drawn, Said: r.Drawn.Hold.Analyze(HoldDraws.Of(Seed + 3, r.Number), OwnSeries.DecayLimit))).ToArray();
        Line(text, $"## 2 Outgassing without a leak");
        Line(text, $"");
        Line(text, $"Target: a leak as only or first cause in ≤ 2 %.");
        Line(text, $"");
        Line(text, $"| law | drawn | leak first | steady rise | of them no bend to be seen | steady beneath a source | held | source | cannot tell |");
        Line(text, $"|---|---|---|---|---|---|---|---|---|");
        foreach (var law in Outgassing.Laws.Append(null))
        {
            var of = rows.Where(r => law is null || r.Drawn.Law == law).ToArray();
            int Count(HoldConclusion c) => of.Count(x => x.Said.Conclusion == c);
            var straight = of.Count(r => r.Said.Conclusion == HoldConclusion.SteadyRise && r.Drawn.IsStraight);
            var (steady, both) = (Count(HoldConclusion.SteadyRise), Count(HoldConclusion.SteadyRiseAndSource));
            Line(text, $"| {law ?? "all"} | {of.Length} | {Share(of.Count(r => HoldTold.NamesLeakFirst(r.Said)), of.Length)} | {steady} | {straight} | {both} | {Count(HoldConclusion.Held)} | {Count(HoldConclusion.Source)} | {Count(HoldConclusion.CannotTell)} |");
        }

        Line(text, $"");
        Line(text, $"Leak first, steady rise: {Numbers(rows.Where(r => HoldTold.NamesLeakFirst(r.Said) && r.Said.Conclusion == HoldConclusion.SteadyRise).Select(r => r.Number))}. Beneath a source: {Numbers(rows.Where(r => HoldTold.NamesLeakFirst(r.Said) && r.Said.Conclusion != HoldConclusion.SteadyRise).Select(r => r.Number))}.");
        Line(text, $"");
    }

    private static void FooledTable(StringBuilder text)
    {
        Line(text, $"## 3 Holds that fool");
        Line(text, $"");
        Line(text, $"{FooledKinds.All.Length} kinds, {EachKind} of each. Target: no wrong confident sentence.");
        Line(text, $"");
        var table = new StringBuilder();
        var (wrong, kinds) = (0, 0);
        foreach (var kind in FooledKinds.All)
        {
            FooledOutcome[] failed = [.. kind.Run(EachKind).Where(o => o.Wrong.Length > 0)];
            wrong += failed.Length;
            kinds += failed.Length > 0 ? 1 : 0;
            if (failed is [var first, ..])
                Line(table, $"| {kind.Name} | {failed.Length} | {string.Join("; ", failed.Select(o => $"{o.Number}: {string.Join(", ", o.Wrong)}"))} | {first.Told} | {first.Fooled.May} |");
        }

        Line(text, $"Wrong: {wrong} of {FooledKinds.All.Length * EachKind} holds, {kinds} of {FooledKinds.All.Length} kinds.");
        Line(text, $"");
        Line(text, $"| kind that fails | of {EachKind} | number: wrong claims | the first said | a careful technician |");
        Line(text, $"|---|---|---|---|---|");
        text.Append(table);
        Line(text, $"");
    }

    private static void HonestTable(StringBuilder text)
    {
        var logs = Enumerable.Range(0, Honest).Select(i => (Number: i, Log: HonestLog.Draw(Seed + 6, i))).Select(r => (r.Number, r.Log, Told: HoldTold.Of(r.Log.Yaml, ("log.csv", r.Log.Csv)))).ToArray();
        var jobs = Enumerable.Range(0, HonestByHand).Select(i => (Number: i, Told: HoldTold.Of(new HonestJobs(Seed + 7 + i).Whole()))).ToArray();
        Line(text, $"## 4 Honest logs");
        Line(text, $"");
        Line(text, $"{Honest} logs of {SimulatedGauge.All.Length} gauges and {HonestLog.Loggers.Length} loggers, and {HonestByHand} jobs written by hand. Target: evidence suspects ≤ 0.5 % of the logs.");
        Line(text, $"");
        Line(text, $"| check | logs suspected | numbers | jobs by hand suspected | numbers |");
        Line(text, $"|---|---|---|---|---|");
        foreach (var check in HoldTold.Evidence.Append(null))
        {
            var suspected = logs.Where(l => l.Told.Suspects(check)).Select(l => l.Number).ToArray();
            var byHand = jobs.Where(j => j.Told.Suspects(check)).Select(j => j.Number).ToArray();
            Line(text, $"| {check ?? "any of them"} | {suspected.Length} ({Share(suspected.Length, logs.Length)}) | {Numbers(suspected)} | {byHand.Length} ({Share(byHand.Length, jobs.Length)}) | {Numbers(byHand)} |");
        }

        Line(text, $"");
        Line(text, $"By logger: {string.Join(", ", HonestLog.Loggers.Select(logger => $"{logger} {logs.Count(l => l.Log.Logger == logger && l.Told.Suspects(null))}"))}.");
        Line(text, $"By gauge: {string.Join("; ", SimulatedGauge.All.Select(gauge => $"{gauge.Name}: {logs.Count(l => l.Log.Gauge == gauge.Name && l.Told.Suspects(null))}"))}.");
        Line(text, $"Refused: {Numbers(logs.Where(l => l.Told.Refused is not null).Select(l => l.Number))}. Holds that pass to anybody's eye: {logs.Count(l => l.Log.Calm)}, of them not passed: {Numbers(logs.Where(l => l.Log.Calm && !l.Told.Makes(HoldClaim.Passed, 0, 0)).Select(l => l.Number))}.");
    }

    private static string Words(HoldResult said) => said.Reason is { } reason ? $"{said.Conclusion} ({reason})" : said.Conclusion.ToString();

    private static string Numbers(IEnumerable<int> numbers) => numbers.ToArray() is { Length: > 0 } some ? string.Join(" ", some.Take(MostNumbers)) + (some.Length > MostNumbers ? " …" : "") : "none";

    private static string Share(int part, int whole) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / Math.Max(whole, 1):0.0} %");

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
