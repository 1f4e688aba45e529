using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>How long the pump stayed on after the level was reached, where a pack asks for it.</summary>
internal sealed class PumpDwellCheck : ICheck
{
    public string Id => "evacuation.dwell";

    public string Phase => Phases.Evacuation;

    public string Title => "Pump kept on at the level";

    public CheckHelp Help { get; } = new(
        "Did the pump stay on for the stated time after the level was reached? Some makers ask for it, because water leaves slowly.",
        "isolation − first reading of the last pull at or below the level ≥ stated time",
        "A generic installation manual of air-to-water heat pumps (published). Asked only where the maker or a named pack does.",
        "Open the valve, let the pump run on for what is missing, and hold again.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation || context.Limits.Find("evacuation.dwell") is not { Lower: not null } limit)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Name(context.Finding(this)).Use("where the gauge sat", evacuation.Gauge).Use("target", evacuation.Target);
        var statement = context.State(limit);
        if (run.Level?.Upper is not { } target || run.Parts.Isolation is not { } isolation)
        {
            yield return finding.Show(statement).NotEvaluated("neither the readings nor the events say when the valve was closed", "Write a log from the start to the hold, and when the valve was closed.");
            yield break;
        }

        if (run.View.LevelBlock is { } block)
        {
            yield return finding.Show(statement).NotEvaluated(block, "Put the gauge at the system, beyond the valve that is closed.");
            yield break;
        }

        run.Name(finding, Reached(run, target.Si, isolation) ?? isolation, isolation);
        if (Reached(run, target.Si, isolation) is not { } reached)
        {
            yield return finding.Show(statement).NotEvaluated("no reading before isolation shows the level reached", "Log the pull, or write the level when it is reached.");
            yield break;
        }

        var dwell = isolation - reached;
        finding.Step("t", "time with the pump on at the level", "isolation − level reached", $"{run.Clock.Moment(isolation)} − {run.Clock.Moment(reached)}", EvacuationClock.Span(dwell), limit.Source);
        finding.Judge(Uncertain.Exact(dwell), DisplayKind.Duration, statement);
        yield return finding.Passes
            ? finding.Say($"The pump stayed on for {EvacuationClock.Span(dwell)} after {VacuumText.Level(context.Present, target.Si)} was reached.").Build()
            : finding.Say($"The pump stayed on for only {EvacuationClock.Span(dwell)} after {VacuumText.Level(context.Present, target.Si)} was reached.").Next(Help.WhenItFails).Build();
    }

    // From when on every reading up to isolation is at the level: a level touched once and lost again does not count.
    private static double? Reached(EvacuationRun run, double level, double isolation)
    {
        var series = run.Rows.Series;
        double? reached = null;
        for (var i = series.IndexAtOrAfter(isolation) - 1; i >= 0 && !series.OverRange[i] && series.Pressures[i] <= level; i--)
            reached = series.Times[i];
        return reached;
    }
}
