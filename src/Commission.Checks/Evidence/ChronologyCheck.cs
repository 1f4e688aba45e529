using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>Whether the steps follow each other as they have to, by the times that are written.</summary>
internal sealed class ChronologyCheck : ICheck
{
    public string Id => "evidence.chronology";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var phases = WorkPhases.Of(context.Job);
        var log = Log(context);
        var ordered = phases.Length > 1;
        if (ordered)
            yield return Order(context, phases, log is { Verdict: Verdict.Pass } ? log.Statement : null);
        if (UnderVacuum(context) is { } energised)
            yield return energised;
        if (Dates(context) is { } dates)
            yield return dates;
        // A log of the right gauge is no news of its own beside the order of the steps.
        if (log is not null && !(ordered && log.Verdict == Verdict.Pass))
            yield return log;
    }

    private Finding Order(CheckContext context, ImmutableArray<WorkPhase> phases, string? log)
    {
        var finding = context.Finding(this, "order of the steps").Remark(log);
        foreach (var phase in phases)
        {
            foreach (var (name, time) in phase.Times)
                finding.Use(name, time);
        }

        var wrong = new List<string>();
        var compared = 0;
        for (var i = 1; i < phases.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (phases[j].Last is not { } earlier || phases[i].First is not { } later)
                    continue;
                compared++;
                if (later.Time.Value.Clock < earlier.Time.Value.Clock)
                    wrong.Add($"{phases[i].Name} begins at {later.Time.Text} (line {Line(later.Time)}), before {phases[j].Name} ends at {earlier.Time.Text} (line {Line(earlier.Time)})");
            }
        }

        if (context.Limits.Find(LimitIds.PressureTestOrder) is { } order && context.Job.PressureTest is { Strength.At: { Value.Clock: { } strength } strengthAt, Tightness.From.At: { Value.Clock: { } tightness } tightnessAt })
        {
            finding.Show(context.State(order)).Use("strength test", strengthAt);
            if (tightness < strength)
                wrong.Add($"the tightness test begins at {tightnessAt.Text}, before the strength test at {strengthAt.Text}");
        }

        if (wrong.Count > 0)
            return finding.Decide(false).Next(this.WhenItFails()).Say($"By the times written, {string.Join("; ", wrong)}.").Build();
        if (compared == 0)
            return finding.NotEvaluated("the times do not tell which step came first", "Write a time of day for each step.");
        return finding.Decide(true).Say($"In order: {string.Join(", ", phases.Where(p => p.First is not null).Select(p => p.Words))}.").Build();
    }

    // With the service valves closed the windings are not in the vacuum of the lines and may be tested. A compressor that starts draws from those lines, or from
    // nothing, whichever way the valves stand.
    private Finding? UnderVacuum(CheckContext context)
    {
        var job = context.Job;
        if (job.Evacuation is not { } evacuation || WorkPhases.Evacuation(job) is not { First.Time.Value.Clock: { } begin, Last.Time.Value.Clock: { } end } phase)
            return null;
        var finding = context.Finding(this, "under vacuum").Use("section evacuated", evacuation.Section);
        foreach (var (name, time) in phase.Times)
            finding.Use(name, time);
        var inside = new List<string>();
        var compared = 0;
        var apart = evacuation.Section?.Value is CircuitSection.LineSet or CircuitSection.LineSetAndIndoor or CircuitSection.Indoor;
        foreach (var (name, time) in new (string, Given<JobTime>?)[] { ("the compressor was started", job.Charging?.CompressorStarted), ("the insulation was tested", apart ? null : job.Electrical?.Insulation?.At) })
        {
            finding.Use(name, time);
            if (time?.Value.Clock is not { } at)
                continue;
            compared++;
            if (at > begin && at < end)
                inside.Add($"{name} at {time.Text} (line {Line(time)})");
        }

        if (compared == 0)
            return null;
        return inside.Count == 0
            ? finding.Decide(true).Say("Nothing was energised or tested for insulation during the evacuation, by the times written.").Build()
            : finding.Danger($"by the times written, {string.Join(" and ", inside)}, between the start of the pump and the end of the evacuation. A motor under vacuum arcs at its terminals.", this.WhenItFails());
    }

    private Finding? Dates(CheckContext context)
    {
        var job = context.Job;
        var day = job.Identity.Date;
        var written = new List<(string Name, DateOnly Date, string Text)>();
        var finding = context.Finding(this, "dates").Use("date of the job", day);
        void Add(string name, Given<DateOnly>? given)
        {
            finding.Use(name, given);
            if (given is not null)
                written.Add((name, given.Value, given.Text));
        }

        Add("leak check", job.LeakCheck?.Date);
        Add("label", job.Label?.Date);
        foreach (var photo in job.Photos)
        {
            finding.Use($"photo {photo.File.Value}", photo.At);
            if (photo.At?.Value.Clock is { } taken)
                written.Add(($"photo {photo.File.Value}", DateOnly.FromDateTime(taken.DateTime), photo.At.Text));
        }

        if (written.Count == 0)
            return null;
        var early = written.Where(w => w.Date < day.Value).Select(w => $"{w.Name} {w.Text}").ToList();
        return early.Count == 0
            ? finding.Decide(true).Say("No date of leak check, label or photo lies before the job.").Build()
            : finding.Decide(false).Next("Correct the dates; a photo of another day belongs to another job.").Say($"Dated before the job of {day.Text}: {string.Join(", ", early)}.").Build();
    }

    private Finding? Log(CheckContext context)
    {
        if (context.Job.Evacuation is not { Log: { GaugeSerial: { } serial } log } evacuation || context.Get<InstrumentKit>().For(ReadingName.Evacuation, evacuation.With) is not { Described.Serial: { } own } gauge)
            return null;
        var finding = context.Finding(this, "vacuum log").Use("gauge of the log", serial).Use($"{gauge.Id}: serial", own, gauge.Id).Use("clock of the log set", log.ClockSet);
        if (log.ClockSet?.Value == false)
            finding.Remark("The clock of the gauge was not set, so the times of the log are its own.");
        return string.Equals(serial.Value, own.Value, StringComparison.OrdinalIgnoreCase)
            ? finding.Decide(true).Say($"The log is of the gauge named, serial {own.Value}.").Build()
            : finding.Decide(false).Next("Attach the log of the gauge that was used, or correct the serial number.").Say($"The log is of gauge {serial.Value}; the job's vacuum gauge {gauge.Id} has serial {own.Value}.").Build();
    }

    private static string Line(Given<JobTime> time) => time.At.Line.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
