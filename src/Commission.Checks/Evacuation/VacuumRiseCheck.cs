using Commission.Checks.EvacuationAnalysis;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>The rise of the isolated system, where a pack limits the rise itself and not only the level.</summary>
internal sealed class VacuumRiseCheck : ICheck
{
    public string Id => "evacuation.rise";

    public string Phase => Phases.Evacuation;

    public string Title => "Rise in the hold";

    public CheckHelp Help { get; } = new(
        "Did the pressure rise by no more than the pack allows within its time after isolation? Asked only where a named pack limits the rise.",
        "highest reading until isolation + stated time, less the reading at isolation ≤ limit; the gauge's zero drops out, its gain stays",
        "US guide specification 15182/15652A, 500 micron in an hour (published).",
        "As with the isolated hold: the rig first, then heat and a nitrogen break for a rise that slows down, the leak search under nitrogen pressure for a steady one.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation || context.Limits.Find("evacuation.rise") is not { Upper: { } most } limit || limit.Companion("after") is not { } after)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Name(context.Finding(this)).Use("where the gauge sat", evacuation.Gauge).Use("isolated at", evacuation.IsolatedAt);
        foreach (var level in evacuation.Levels)
            finding.Use($"isolated at {level.At.Text}", level.Isolated);
        var statement = context.State(limit);
        if (run.View.HoldBlock is { } block)
        {
            yield return finding.Show(statement).NotEvaluated(block, "Put the gauge on the system's side of the valve and hold again.");
            yield break;
        }

        if (run.Parts is not { Isolation: { } isolation, HoldEnd: { } end } || run.Read(after) is not { } decay || run.AtIsolation is not { } begun)
        {
            yield return finding.Show(statement).NotEvaluated("there is no reading at isolation", "Write when the valve was closed, and read the gauge then.");
            yield break;
        }

        run.Name(finding, isolation, Math.Min(decay.Due, end));
        var judged = JudgedHold.Of(run, decay, begun.Value + most.Si);
        if (judged.IsAboveRange)
        {
            yield return finding.Decide(false, statement).Say($"The pressure rose above the gauge's range within {EvacuationClock.Span(after)}.").Next(Help.WhenItFails).Build();
            yield break;
        }

        if (judged.Highest is not { } highest)
        {
            yield return finding.Show(statement).NotEvaluated(judged.WhyNot!, judged.Todo!);
            yield break;
        }

        var rise = highest - begun;
        finding.Step(
            "Δp", "rise until the stated time", "p_max − p_i", $"{VacuumText.Level(context.Present, highest.Value)} − {VacuumText.Level(context.Present, begun.Value)}",
            context.Present.Text(rise, DisplayKind.Vacuum), limit.Source);
        finding.Judge(rise, DisplayKind.Vacuum, statement);
        foreach (var reservation in new[] { run.View.HoldReservation, run.Gauge.Reservation, judged.Reservation })
        {
            if (reservation is not null)
                finding.Reserve(reservation);
        }

        var text = $"A rise of {VacuumText.Level(context.Present, rise.Value)} within {EvacuationClock.Span(after)} after isolation";
        if ((run.View.HoldReservation ?? run.Gauge.Reservation ?? judged.Reservation) is not null)
            finding.Next("Write where the gauge sat, and its accuracy; log the hold.");
        yield return finding.Passes
            ? finding.Say($"{text}.").Build()
            : finding.Say($"{text}: more than the pack allows.").Next(Help.WhenItFails).Build();
    }
}
