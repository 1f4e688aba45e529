using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>
/// Draws the outcome from the findings. A danger or a failure first; then a required check that could not be judged; then what is
/// conditional or still to be done. A pass within its uncertainty is a pass.
/// </summary>
internal static class OutcomeMaker
{
    public static (Outcome Outcome, ImmutableArray<string> Reasons, ImmutableArray<PunchItem> Conditions) Make(
        Presentation present,
        IReadOnlyList<Finding> findings,
        IReadOnlyList<MissingPart> missing,
        IReadOnlyList<PunchItem> fromJob)
    {
        // Evidence states facts about the record; it does not fail a system, unless it shows a danger.
        var failed = findings.Where(f => f.IsDanger).Concat(findings.Where(f => f is { IsDanger: false, Verdict: Verdict.Fail } && f.Phase != Phases.Evidence)).ToList();
        var conditional = findings.Where(f => f.Verdict == Verdict.Conditional && f.Phase != Phases.Evidence).ToList();

        var reasons = ImmutableArray.CreateBuilder<string>();
        foreach (var f in failed)
            reasons.Add(present.Text(f is { Check: Diagnosis.Check, Reason: { } cause } ? RecordMessages.ReasonWithoutStop(Name(f), new([new TextValue(cause)], ListJoin.Semicolons)) : RecordMessages.Reason(Name(f), new(f.Statement))));
        foreach (var f in conditional)
            reasons.Add(present.Text(RecordMessages.ReasonWithoutStop(Name(f), Condition(f))));
        foreach (var item in fromJob)
            reasons.Add(present.Text(ReportMessages.StillToBeDone(new(item.Text))));

        var conditions = ImmutableArray.CreateBuilder<PunchItem>();
        conditions.AddRange(fromJob);
        foreach (var f in conditional)
            conditions.Add(new PunchItem(present.Text(f.NextStep is { } next ? RecordMessages.Reason(Name(f), new(next)) : RecordMessages.ReasonCut(Name(f), Condition(f))), f.Number));

        var outcome = failed.Count > 0 ? Outcome.NotAccepted
            : missing.Count > 0 ? Outcome.Incomplete
            : conditions.Count > 0 ? Outcome.AcceptedWithConditions
            : Outcome.Accepted;
        return (outcome, reasons.ToImmutable(), conditions.ToImmutable());
    }

    /// <summary>
    /// The one thing to do before anything else: a danger, else the earliest step of the work that failed or is missing; what comes later rests on it.
    /// Null when nothing is to be done.
    /// </summary>
    /// <param name="present">Makes its texts.</param>
    /// <param name="findings">The findings of the job.</param>
    /// <param name="missing">What is missing.</param>
    /// <param name="diagnosis">What the running circuit says; its step stands for the whole start-up.</param>
    public static PunchItem? FirstStep(Presentation present, IReadOnlyList<Finding> findings, IReadOnlyList<MissingPart> missing, Diagnosis? diagnosis)
    {
        if (findings.FirstOrDefault(f => f is { IsDanger: true, NextStep: not null }) is { } danger)
            return Step(danger, danger.NextStep);
        // The diagnosis outranks the single checks of the start-up, and what failed comes before what is missing.
        var failed = findings.Where(f => f is { Verdict: Verdict.Fail, NextStep: not null } && f.Phase != Phases.Evidence)
            .Select(f => (Order: WorkOrder.Of(f.Phase), Rank: f.Check == Diagnosis.Check ? 0 : 1, Step: Step(f, f.Check == Diagnosis.Check ? diagnosis?.NextStep : f.NextStep)));
        var absent = missing.Where(m => m.NextStep is not null).Select(m => (Order: WorkOrder.OfCheck(m.Checks[0]), Rank: 2, Step: Step(null, m.NextStep)));
        if (failed.Concat(absent).OrderBy(s => s.Order).ThenBy(s => s.Rank).Select(s => s.Step).FirstOrDefault(s => s is not null) is { } step)
            return step;
        return findings.FirstOrDefault(f => f is { Verdict: Verdict.Conditional, NextStep: not null } && f.Phase != Phases.Evidence) is { } condition
            ? Step(condition, present.Text(RecordMessages.Reason(Name(condition), new(condition.NextStep!))))
            : findings.FirstOrDefault(f => f is { IsToLookAt: true }) is { } oddity ? Step(oddity, oddity.NextStep) : null;
    }

    private static PunchItem? Step(Finding? of, string? text) => string.IsNullOrEmpty(text) ? null : new PunchItem(text, of?.Number);

    // What was not shown, or the number with its U that lies too near to the limit to be sure; a number that is sure is no condition.
    private static ListValue Condition(Finding f) => new([.. new MessageValue?[]
    {
        f is { Measured: { } measured, Limits: [var limit, ..], ConformityText: { } chance } && (f.Reservation is null || f.ProbabilityOfConformity < 0.95) ? RecordMessages.ConditionNear(new(measured.Text), new(limit.Text), new(chance)) : null,
        f.Reservation is { } reservation ? new TextValue(reservation) : null,
    }.OfType<MessageValue>()], ListJoin.Semicolons);

    private static Message Name(Finding f) => f.Subject is null ? CommonMessages.AsWritten(new(f.Title)) : RecordMessages.NameOfPart(new(f.Title), new(f.Subject));
}
