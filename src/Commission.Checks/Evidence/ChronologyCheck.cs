using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Messages;
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
            yield return Order(context, phases, log is { Verdict: Verdict.Pass, Messages.Statement: [var told, ..] } ? told : null);
        if (UnderVacuum(context) is { } energised)
            yield return energised;
        if (Dates(context) is { } dates)
            yield return dates;
        // A log of the right gauge is no news of its own beside the order of the steps.
        if (log is not null && !(ordered && log.Verdict == Verdict.Pass))
            yield return log;
    }

    private Finding Order(CheckContext context, ImmutableArray<WorkPhase> phases, Message? log)
    {
        var finding = context.Finding(this, EvidenceMessages.SubjectOrder).Remark(log);
        foreach (var phase in phases)
        {
            foreach (var (name, time) in phase.Times)
                finding.Use(name, time);
        }

        var wrong = new List<MessageValue>();
        var compared = 0;
        for (var i = 1; i < phases.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (phases[j].Last is not { } earlier || phases[i].First is not { } later)
                    continue;
                compared++;
                if (later.Time.Value.Clock < earlier.Time.Value.Clock)
                    wrong.Add(EvidenceMessages.BeginsBefore(phases[i].Name, new(later.Time.Text), Line(later.Time), phases[j].Name, new(earlier.Time.Text), Line(earlier.Time)));
            }
        }

        if (context.Limits.Find(LimitIds.PressureTestOrder) is { } order && context.Job.PressureTest is { Strength.At: { Value.Clock: { } strength } strengthAt, Tightness.From.At: { Value.Clock: { } tightness } tightnessAt })
        {
            finding.Show(context.State(order)).Use(EvidenceMessages.TimeStrengthTest, strengthAt);
            if (tightness < strength)
                wrong.Add(EvidenceMessages.TightnessBeforeStrength(new(tightnessAt.Text), new(strengthAt.Text)));
        }

        if (wrong.Count > 0)
            return finding.Decide(false).Next(this.WhenItFails()).Say(EvidenceMessages.OrderWrong(new ListValue([.. wrong], ListJoin.Semicolons))).Build();
        if (compared == 0)
            return finding.NotEvaluated(EvidenceMessages.OrderUnknown, EvidenceMessages.OrderUnknownNext);
        return finding.Decide(true).Say(EvidenceMessages.OrderRight(new ListValue([.. phases.Where(p => p.First is not null).Select(p => p.Words)], ListJoin.Comma))).Build();
    }

    // With the service valves closed the windings are not in the vacuum of the lines and may be tested. A compressor that starts draws from those lines, or from
    // nothing, whichever way the valves stand.
    private Finding? UnderVacuum(CheckContext context)
    {
        var job = context.Job;
        if (job.Evacuation is not { } evacuation || WorkPhases.Evacuation(job) is not { First.Time.Value.Clock: { } begin, Last.Time.Value.Clock: { } end } phase)
            return null;
        var finding = context.Finding(this, EvidenceMessages.SubjectUnderVacuum).Use(EvidenceMessages.SectionEvacuated, evacuation.Section);
        foreach (var (name, time) in phase.Times)
            finding.Use(name, time);
        var inside = new List<MessageValue>();
        var compared = 0;
        var apart = evacuation.Section?.Value is CircuitSection.LineSet or CircuitSection.LineSetAndIndoor or CircuitSection.Indoor;
        foreach (var (name, time) in new (Message, Given<JobTime>?)[] { (EvidenceMessages.CompressorWasStarted, job.Charging?.CompressorStarted), (EvidenceMessages.InsulationWasTested, apart ? null : job.Electrical?.Insulation?.At) })
        {
            finding.Use(name, time);
            if (time?.Value.Clock is not { } at)
                continue;
            compared++;
            if (at > begin && at < end)
                inside.Add(EvidenceMessages.ActAt(name, new(time.Text), Line(time)));
        }

        if (compared == 0)
            return null;
        return inside.Count == 0
            ? finding.Decide(true).Say(EvidenceMessages.NothingEnergised).Build()
            : finding.Danger(EvidenceMessages.EnergisedUnderVacuum(new ListValue([.. inside])), this.WhenItFails());
    }

    private Finding? Dates(CheckContext context)
    {
        var job = context.Job;
        var day = job.Identity.Date;
        var written = new List<(Message Name, DateOnly Date, string Text)>();
        var finding = context.Finding(this, EvidenceMessages.SubjectDates).Use(ReadingsMessages.DateOfJob, day);
        void Add(Message name, Given<DateOnly>? given)
        {
            finding.Use(name, given);
            if (given is not null)
                written.Add((name, given.Value, given.Text));
        }

        Add(ReadingsMessages.LeakCheck, job.LeakCheck?.Date);
        Add(EvidenceMessages.DateLabel, job.Label?.Date);
        foreach (var photo in job.Photos)
        {
            finding.Use(EvidenceMessages.DatePhoto(new(photo.File.Value)), photo.At);
            if (photo.At?.Value.Clock is { } taken)
                written.Add((EvidenceMessages.DatePhoto(new(photo.File.Value)), DateOnly.FromDateTime(taken.DateTime), photo.At.Text));
        }

        if (written.Count == 0)
            return null;
        var early = written.Where(w => w.Date < day.Value).Select(w => (MessageValue)EvidenceMessages.Dated(w.Name, new(w.Text))).ToList();
        return early.Count == 0
            ? finding.Decide(true).Say(EvidenceMessages.DatesGood).Build()
            : finding.Decide(false).Next(EvidenceMessages.DatesEarlyNext).Say(EvidenceMessages.DatesEarly(new(day.Text), new ListValue([.. early], ListJoin.Comma))).Build();
    }

    private Finding? Log(CheckContext context)
    {
        if (context.Job.Evacuation is not { Log: { GaugeSerial: { } serial } log } evacuation || context.Get<InstrumentKit>().For(ReadingName.Evacuation, evacuation.With) is not { Described.Serial: { } own } gauge)
            return null;
        var finding = context.Finding(this, EvidenceMessages.SubjectVacuumLog).Use(EvidenceMessages.LogGauge, serial).Use(EvidenceMessages.InstrumentSerial(new(gauge.Id)), own, gauge.Id).Use(EvidenceMessages.LogClockSet, log.ClockSet);
        if (log.ClockSet?.Value == false)
            finding.Remark(EvidenceMessages.LogClockNotSet);
        return string.Equals(serial.Value, own.Value, StringComparison.OrdinalIgnoreCase)
            ? finding.Decide(true).Say(EvidenceMessages.LogGaugeRight(new(own.Value))).Build()
            : finding.Decide(false).Next(EvidenceMessages.LogGaugeWrongNext).Say(EvidenceMessages.LogGaugeWrong(new(serial.Value), new(gauge.Id), new(own.Value))).Build();
    }

    private static NameValue Line(Given<JobTime> time) => new(time.At.Line.ToString(System.Globalization.CultureInfo.InvariantCulture));
}
