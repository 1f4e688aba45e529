using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.NitrogenAnalysis;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>How long the nitrogen hold lasted.</summary>
internal sealed class HoldTimeCheck : ICheck
{
    public string Id => "pressure-test.time";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest?.Tightness is null || context.Get<NitrogenRun>() is not { Rows: { } rows } run)
            yield break;
        var finding = context.Finding(this).Use("pressure log", run.Hold!.Series?.File);
        foreach (var at in rows.At)
            finding.Use("time of a reading", at);
        if (context.Limits.Find(LimitIds.PressureTestHoldTime) is not { Lower: { } least } limit)
        {
            yield return finding.NotEvaluated("no pack sets a time", "Name a limits pack.");
            yield break;
        }

        if (Length(rows) is not { } length)
        {
            yield return finding.Show(context.State(limit)).NotEvaluated("the times of the readings are not known", "Write the clock time of the first and of the last reading.");
            yield break;
        }

        finding.Judge(Uncertain.Exact(length), DisplayKind.Duration, context.State(limit)).Remark(Limits.LimitStatements.Remark(limit, context.Present.Units));
        yield return finding.Conclude(
            $"The nitrogen was held for {EvacuationClock.Span(length)}.",
            $"The nitrogen was held for {EvacuationClock.Span(length)}; {least.Text} are asked.",
            this.WhenItFails());
    }

    private static double? Length(NitrogenRows rows)
    {
        if (!rows.Times.IsEmpty)
            return rows.Length;
        if (rows.At.Length < 2)
            return null;
        var (first, last) = (rows.At[0].Value, rows.At[^1].Value);
        return first.Clock is { } a && last.Clock is { } b ? (b - a).TotalSeconds
            : first.Elapsed is { } p && last.Elapsed is { } q ? q.Si - p.Si
            : null;
    }
}

/// <summary>Whether the gas had given off the heat of filling before the hold began.</summary>
internal sealed class SettledCheck : ICheck
{
    public string Id => "pressure-test.settled";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { Tightness: { } hold } test)
            yield break;
        var finding = context.Finding(this).Use("settled", NitrogenRun.First(hold)?.Settled).Use("filling began", test.Started).Use("first reading", NitrogenRun.First(hold)?.At);
        var limit = context.Limits.Require(LimitIds.PressureTestSettled);
        var least = limit.Least;
        if (NitrogenRun.Settled(test, hold) is not { } settled)
        {
            yield return finding.Show(context.State(limit)).NotEvaluated(PressureTestMessages.SettledNotWritten, PressureTestMessages.SettledNotWrittenNext, "pressure test: {tightness: {from: {settled: 12 min}}}");
            yield break;
        }

        finding.Judge(Uncertain.Exact(settled), DisplayKind.Duration, context.State(limit));
        yield return finding.Conclude(
            $"The nitrogen rested for {EvacuationClock.Span(settled)} before the hold.",
            $"The nitrogen rested for only {EvacuationClock.Span(settled)} before the hold; {least.Text} are usual.",
            this.WhenItFails());
    }

    // When filling began is all the clock says: the rest is shorter than that by the time it took, which crews do not write.
}
