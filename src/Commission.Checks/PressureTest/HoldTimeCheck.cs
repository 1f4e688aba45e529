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
        var finding = context.Finding(this).Use(PressureTestMessages.ReadingLog, run.Hold!.Series?.File);
        foreach (var at in rows.At)
            finding.Use(PressureTestMessages.ReadingTime, at);
        if (context.Limits.Find(LimitIds.PressureTestHoldTime) is not { Lower: { } least } limit)
        {
            yield return finding.NotEvaluated(PressureTestMessages.TimeNoPack, CommonMessages.NameAPackNext);
            yield break;
        }

        if (Length(rows) is not { } length)
        {
            yield return finding.Show(context.State(limit)).NotEvaluated(PressureTestMessages.TimesNotKnown, PressureTestMessages.TimesNotKnownNext);
            yield break;
        }

        finding.Judge(Uncertain.Exact(length), DisplayKind.Duration, context.State(limit)).Remark(Limits.LimitStatements.Remark(limit, context.Present.Units));
        yield return finding.Conclude(
            PressureTestMessages.TimeHeld(new(length)),
            PressureTestMessages.TimeTooShort(new(length), new(least.Text)),
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
        var finding = context.Finding(this).Use(PressureTestMessages.ReadingSettled, NitrogenRun.First(hold)?.Settled).Use(PressureTestMessages.ReadingFillingBegan, test.Started).Use(PressureTestMessages.ReadingFirst, NitrogenRun.First(hold)?.At);
        var limit = context.Limits.Require(LimitIds.PressureTestSettled);
        var least = limit.Least;
        if (NitrogenRun.Settled(test, hold) is not { } settled)
        {
            yield return finding.Show(context.State(limit)).NotEvaluated(PressureTestMessages.SettledNotWritten, PressureTestMessages.SettledNotWrittenNext, "pressure test: {tightness: {from: {settled: 12 min}}}");
            yield break;
        }

        finding.Judge(Uncertain.Exact(settled), DisplayKind.Duration, context.State(limit));
        yield return finding.Conclude(
            PressureTestMessages.SettledLongEnough(new(settled)),
            PressureTestMessages.SettledTooShort(new(settled), new(least.Text)),
            this.WhenItFails());
    }

    // When filling began is all the clock says: the rest is shorter than that by the time it took, which crews do not write.
}
