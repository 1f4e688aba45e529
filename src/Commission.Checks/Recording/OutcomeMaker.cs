using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>
/// Draws the outcome from the findings. A failure first; then a required check that could not be judged; then what is still
/// to be done. A lone conditional pass without a reservation leaves a job accepted: it is a footnote, not a punch list.
/// </summary>
internal static class OutcomeMaker
{
    public const string Accepted = "accepted";
    public const string WithConditions = "accepted with conditions";
    public const string NotAccepted = "not accepted";
    public const string Incomplete = "incomplete";

    public static (string Outcome, ImmutableArray<string> Reasons, ImmutableArray<PunchItem> Conditions) Make(
        IReadOnlyList<Finding> findings,
        IReadOnlyList<MissingRequirement> missing,
        IReadOnlyList<PunchItem> fromJob)
    {
        // Evidence states facts about the record; it does not fail a system.
        var judged = findings.Where(f => f.Phase != Phases.Evidence).ToList();
        var failed = judged.Where(f => f.Verdict is Verdict.Fail or Verdict.ConditionalFail).ToList();
        var reserved = judged.Where(f => f.Verdict == Verdict.ConditionalPass && f.Reservation is not null).ToList();

        var reasons = ImmutableArray.CreateBuilder<string>();
        foreach (var f in failed)
            reasons.Add($"{Name(f)}: {f.Statement}");
        foreach (var m in missing)
            reasons.Add(m.Sentence);
        foreach (var f in reserved)
            reasons.Add($"{Name(f)}: passes with a reservation: {f.Reservation}.");
        foreach (var item in fromJob)
            reasons.Add($"Still to be done: {item.Text}");

        var conditions = ImmutableArray.CreateBuilder<PunchItem>();
        conditions.AddRange(fromJob);
        foreach (var f in reserved)
            conditions.Add(new PunchItem($"{Name(f)}: {f.NextStep ?? f.Reservation!}", f.Number));

        var outcome = failed.Count > 0 ? NotAccepted
            : missing.Count > 0 ? Incomplete
            : conditions.Count > 0 ? WithConditions
            : Accepted;
        return (outcome, reasons.ToImmutable(), conditions.ToImmutable());
    }

    private static string Name(Finding f) => f.Subject is null ? f.Title : $"{f.Title} ({f.Subject})";
}
