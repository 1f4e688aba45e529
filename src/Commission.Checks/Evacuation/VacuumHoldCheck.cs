using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>
/// The isolated hold against the decay limit: the clock starts at isolation, every reading up to the stated time counts, and what comes
/// later is told and not judged, so that a crew that holds longer is never worse off.
/// </summary>
internal sealed class VacuumHoldCheck : ICheck
{
    public string Id => "evacuation.hold";

    public string Phase => Phases.Evacuation;

    public string Title => "Isolated hold";

    public CheckHelp Help { get; } = new(
        "After the valve was closed, did the pressure stay below the decay limit for the stated time? It says that nothing large came in and nothing wet was left; it does not prove that the system is tight.",
        "highest reading from isolation to isolation + stated time, the interpolated one at that time included ≤ decay limit; later readings are told, not judged",
        "1000 micron after 10 min, longer for large systems: common practice, no source; ASHRAE 15.2 1500 micron after 10 min and EN 378-2 270 Pa after 30 min (from memory); US guide specification, a rise of 500 micron in an hour (published); the maker first.",
        "Blank the rig off and watch it alone first. Then let the shape of the rise say what comes next: a rise that slows down asks for heat and a nitrogen break, a steady one for the leak search under nitrogen pressure.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Name(context.Finding(this)).Use("where the gauge sat", evacuation.Gauge).Use("isolated at", evacuation.IsolatedAt)
            .Use("decay limit", evacuation.DecayLimit?.Level).Use("decay limit: after", evacuation.DecayLimit?.After).Use("ambient", evacuation.Ambient);
        foreach (var level in evacuation.Levels)
            finding.Use($"isolated at {level.At.Text}", level.Isolated);
        yield return run.DecayLimit is { Upper: { } most } limit && limit.Companion("after") is { } after
            ? Judge(context, run, finding, limit, most.Si, after)
            : finding.NotEvaluated("no pack sets a decay limit with its time", "Name a limits pack, or write decay limit: {level: 1000 micron, after: 10 min}.");
    }

    private Finding Judge(CheckContext context, EvacuationRun run, FindingBuilder finding, Limit limit, double most, double after)
    {
        if (run.Rows.Series.Count == 0)
            return finding.NotEvaluated("neither a log nor levels are written", "Write a log, or the level at isolation and the level after the stated time.");
        if (run.View.HoldBlock is { } block)
            return finding.NotEvaluated(block, "Put the gauge on the system's side of the valve and hold again.");
        if (run is not { Decay: { } decay, Parts: { Isolation: { } isolation, HoldEnd: { } end } })
            return finding.NotEvaluated("no isolation is written, and the readings show none", "Write when the valve was closed: events: [{at: 71 min, what: isolated}].");

        run.Name(finding, isolation, end);
        var statement = context.State(limit);
        finding.Remark(limit.Remark(context.Present.Units)).Step(
            "t_d", "time at which the hold is judged", "isolation + stated time", $"{run.Clock.Moment(isolation)} + {EvacuationClock.Span(after)}", run.Clock.Moment(decay.Due), limit.Source);
        var judged = JudgedHold.Of(run, decay, most);
        if (judged.IsAboveRange)
            return Failed(context, run, finding.Decide(false, statement), decay, most, $"The pressure rose above the gauge's range within {EvacuationClock.Span(after)} after isolation");
        return judged.Highest is { } highest
            ? Verdict(context, run, finding, statement, decay, highest, judged, most, after)
            : finding.Show(statement).NotEvaluated(judged.WhyNot!, judged.Todo!);
    }

    private Finding Verdict(
        CheckContext context, EvacuationRun run, FindingBuilder finding, LimitStatement statement, DecayReading decay, Uncertain highest, JudgedHold judged, double most, double after)
    {
        var present = context.Present;
        if (decay.AtDue is not null && run.Rows.At(decay.Due) is { } atDue)
            finding.Step("p_d", "pressure at that time", "straight line between the readings on either side", $"at {run.Clock.Moment(decay.Due)}", present.Text(atDue, DisplayKind.Vacuum));
        finding.Step("p_max", "highest pressure until then", "largest of all readings from isolation on", decay.HighestAt is { } t ? $"at {run.Clock.Moment(t)}" : "", present.Text(highest, DisplayKind.Vacuum));
        finding.Judge(highest, DisplayKind.Vacuum, statement);
        foreach (var reservation in new[] { run.View.HoldReservation, run.Gauge.Reservation, judged.Reservation })
        {
            if (reservation is not null)
                finding.Reserve(reservation);
        }

        var from = run.AtIsolation is { } level ? $"From {VacuumText.Level(present, level.Value)} at isolation to" : "To";
        if (!finding.Passes)
            return Failed(context, run, finding, decay, most, $"{from} {VacuumText.Level(present, highest.Value)} within {EvacuationClock.Span(after)}");
        var end = VacuumText.Level(present, decay.AtDue ?? highest.Value);
        var top = VacuumText.Level(present, highest.Value);
        finding.Say($"{from} {end} after {EvacuationClock.Span(after)}{(top == end ? "" : $", highest {top}")}: never above {VacuumText.Level(present, most)} until then.");
        if (judged.Reservation is not null)
            finding.Next("Read the gauge at the stated time, too.");
        else if ((run.View.HoldReservation ?? run.Gauge.Reservation) is not null)
            finding.Next("Write where the gauge sat, which valve was closed, and the gauge's accuracy.");
        return Later(context, run, finding, decay).Build();
    }

    // What a crew does next depends on what the rise looks like, and on whether the rig was ruled out.
    private Finding Failed(CheckContext context, EvacuationRun run, FindingBuilder finding, DecayReading decay, double most, string sentence)
    {
        var crossed = Crossed(run, most) is { } seconds ? $", past {VacuumText.Level(context.Present, most)} after {EvacuationClock.Span(seconds)}" : "";
        finding.Say($"{sentence}{crossed}: above the decay limit.");
        var shape = run.Hold is { } hold ? VacuumText.Wording(context.Present).NextStep(hold) : null;
        finding.Use("rig: rise", run.Evacuation.RigCheck?.Rise).Next(shape is null ? Help.WhenItFails
            : run.Evacuation.RigCheck is not null ? shape
            : shape.Contains("the rig", StringComparison.Ordinal) ? $"Test the rig before hunting the system. {shape}"
            : $"Test the rig before hunting the system: blank it off and watch it alone. {shape}");
        return Later(context, run, finding, decay).Build();
    }

    private static FindingBuilder Later(CheckContext context, EvacuationRun run, FindingBuilder finding, DecayReading decay)
    {
        if (decay is { HighestAfter: { } later, AtEnd: { } last } && run.Parts.HoldEnd > decay.Due)
        {
            var (top, end) = (VacuumText.Level(context.Present, later), VacuumText.Level(context.Present, last));
            finding.Remark(top == end
                ? $"The hold went on to {EvacuationClock.Span(decay.HoldLength)} and {end}: told, not judged."
                : $"The hold went on to {EvacuationClock.Span(decay.HoldLength)}, highest {top} and at last {end}: told, not judged.");
        }

        return finding.Remark(run.View.HoldRemark);
    }

    private static double? Crossed(EvacuationRun run, double level)
    {
        if (run.Parts is not { Isolation: { } isolation, HoldEnd: { } end })
            return null;
        var series = run.Rows.Series;
        for (var i = series.IndexAtOrAfter(isolation); i < series.Count && series.Times[i] <= end; i++)
        {
            if (series.OverRange[i] || series.Pressures[i] > level)
                return series.Times[i] - isolation;
        }

        return null;
    }
}
