using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Recording;

/// <summary>
/// Takes back what was concluded from readings that evidence shows cannot be what they say. A danger stands: nobody is sent back to a machine because
/// a reading is in doubt. What is softer than a contradiction impeaches nothing.
/// </summary>
internal static class Impeachment
{
    /// <summary>The findings, those that rest on an impeached reading without their verdict.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="findings">What the checks found.</param>
    public static IEnumerable<Finding> Apply(CheckContext context, IReadOnlyList<Finding> findings)
    {
        // By its place in the job: checks call the same reading by different names.
        var evidence = new Dictionary<SourceLocation, Finding>();
        foreach (var finding in findings)
        {
            foreach (var use in finding.Impeached)
                evidence.TryAdd(use.At, finding);
        }

        return findings.Select(f => IsConcluded(f) && f.Readings.FirstOrDefault(r => evidence.ContainsKey(r.At)) is { } doubted
            ? TakenBack(context, f, doubted, evidence[doubted.At])
            : f);
    }

    // The diagnosis looks at contradictions itself.
    private static bool IsConcluded(Finding finding) =>
        finding is { IsDanger: false, Verdict: Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Conditional or Verdict.Fail } && finding.Phase != Phases.Evidence && finding.Check != Diagnosis.Check;

    private static Finding TakenBack(CheckContext context, Finding finding, ReadingUse reading, Finding evidence)
    {
        var reason = CommonMessages.ReadingCannotBe(new(reading.Name), new(reading.Text), new(evidence.Title));
        var statement = CommonMessages.NotEvaluated(reason);
        return finding with
        {
            Verdict = Verdict.NotEvaluated,
            IsTakenBack = true,
            Reservation = null,
            Reason = context.Present.Text(reason),
            Statement = context.Present.Text(statement),
            NextStep = evidence.NextStep,
            Messages = new FindingMessages([statement]) { Reason = reason, NextStep = evidence.Messages?.NextStep },
            ProbabilityOfConformity = null,
            ConformityText = null,
            MaximumFalseAccept = null,
            FalseAcceptText = null,
            Adequacy = null,
            AdequacyText = null,
            Strip = null,
        };
    }
}
