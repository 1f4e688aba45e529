using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Checks.Tests.Limits;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>
/// The outcome of a job from its verdicts. ILAC-G8:09/2019, 4.2.3: a result beyond the limit whose uncertainty reaches back inside is a rejection,
/// one inside whose uncertainty reaches beyond is an acceptance on a condition.
/// </summary>
public sealed class OutcomeTests
{
    // A ground that may have 1 ohm, guarded: 1.005 ± 0.01 ohm lies outside by less than its uncertainty, 1.02 ± 0.01 by more.
    [Theory]
    [InlineData("0.98 ohm +/- 0.01 ohm", Verdict.Pass, false)]
    [InlineData("0.995 ohm +/- 0.01 ohm", Verdict.Conditional, false)]
    [InlineData("1.005 ohm +/- 0.01 ohm", Verdict.Fail, true)]
    [InlineData("1.02 ohm +/- 0.01 ohm", Verdict.Fail, true)]
    public void A_limit_missed_within_the_uncertainty_is_missed(string ground, Verdict verdict, bool refused)
    {
        var record = JobLines.Record(JobLines.Of($"electrical: {{supply: {{protective earth: {ground}}}}}", work: "seasonal check"));
        var found = Assert.Single(record.Findings, f => f.Check == "electrical.ground" && f.Subject == "protective earth");
        Assert.Equal(verdict, found.Verdict);
        Assert.Equal(refused, record.Outcome == Outcome.NotAccepted);
        Assert.Equal(refused, record.Reasons.Any(r => r.Contains(found.Statement, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(Verdict.Pass, null, Outcome.Accepted)]
    [InlineData(Verdict.Information, null, Outcome.Accepted)]
    [InlineData(Verdict.NotEvaluated, null, Outcome.Accepted)]
    [InlineData(Verdict.PassWithinUncertainty, null, Outcome.Accepted)]
    [InlineData(Verdict.CannotDecide, null, Outcome.Accepted)]
    [InlineData(Verdict.Conditional, null, Outcome.AcceptedWithConditions)]
    [InlineData(Verdict.Conditional, "the filter was not looked at", Outcome.AcceptedWithConditions)]
    [InlineData(Verdict.Fail, null, Outcome.NotAccepted)]
    public void One_finding_decides(Verdict verdict, string? reservation, Outcome outcome)
    {
        var (said, reasons, conditions) = OutcomeMaker.Make(LimitWords.Us, [Found(verdict, Phases.Electrical, reservation)], [], []);
        Assert.Equal(outcome, said);
        Assert.Equal(outcome == Outcome.Accepted ? 0 : 1, reasons.Length);
        Assert.Equal(outcome == Outcome.AcceptedWithConditions ? 1 : 0, conditions.Length);
    }

    [Fact]
    public void Evidence_accuses_nobody() =>
        Assert.Equal(Outcome.Accepted, OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Fail, Phases.Evidence), Found(Verdict.Conditional, Phases.Evidence, "why")], [], []).Outcome);

    [Fact]
    public void A_danger_decides_in_every_phase() =>
        Assert.All(Phases.All, phase => Assert.Equal(Outcome.NotAccepted, OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Pass), Found(Verdict.Fail, phase) with { IsDanger = true }], [], []).Outcome));

    [Fact]
    public void A_failure_comes_before_a_gap_and_a_gap_before_a_condition()
    {
        var missing = new MissingPart(["electrical.ground"], "The ground was not tested.", "Ground: not tested.");
        var open = new PunchItem("Fit the cover.", null);
        Assert.Equal(Outcome.AcceptedWithConditions, OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Pass)], [], [open]).Outcome);
        Assert.Equal(Outcome.Incomplete, OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Pass)], [missing], [open]).Outcome);
        var (outcome, reasons, conditions) = OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Fail)], [missing], [open]);
        Assert.Equal(Outcome.NotAccepted, outcome);
        Assert.Equal(["Ground (north): 1.01 ohm.", "Still to be done: Fit the cover."], reasons);
        Assert.Equal([open], conditions);
    }

    [Fact]
    public void A_condition_says_what_to_do_or_what_was_not_shown()
    {
        var told = OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Conditional, reservation: "the filter was not looked at") with { NextStep = "Look at the filter.", Number = 4 }], [], []);
        Assert.Equal([new PunchItem("Ground (north): Look at the filter.", 4)], told.Conditions);
        Assert.Equal(["Ground (north): the filter was not looked at."], told.Reasons);
        var silent = OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Conditional, reservation: "the filter was not looked at") with { Subject = null }], [], []);
        Assert.Equal("Ground: the filter was not looked at", Assert.Single(silent.Conditions).Text);
    }

    // A number too near to its limit to be sure carries both and how likely it conforms; what was not shown stands behind it.
    [Fact]
    public void A_condition_of_a_number_says_the_number_its_limit_and_its_chance()
    {
        var limit = new LimitStatement(LimitKind.AtMost, "at most 1 ohm", null, 1, null, "common practice", "common-practice", "", "common practice", DecisionRule.Guarded);
        var near = Found(Verdict.Conditional) with
        {
            Measured = new MeasuredQuantity(new DisplayQuantity(0.995, "resistance", "Ω", 0.995, 3, "0.995 Ω"), 0.005, 0.01, 2, null, "0.995 ± 0.010 Ω", "0.010 Ω"),
            Limits = [limit, limit with { Text = "at most 2 ohm" }],
            ProbabilityOfConformity = 0.841,
            ConformityText = "84 %",
        };
        Assert.Equal(["Ground (north): 0.995 ± 0.010 Ω, limit at most 1 ohm, 84 % of being within it."], OutcomeMaker.Make(LimitWords.Us, [near], [], []).Reasons);
        Assert.Equal(
            ["Ground (north): 0.995 ± 0.010 Ω, limit at most 1 ohm, 84 % of being within it; the lead was not zeroed."],
            OutcomeMaker.Make(LimitWords.Us, [near with { Reservation = "the lead was not zeroed" }], [], []).Reasons);
        Assert.Equal(["Ground (north): the lead was not zeroed."], OutcomeMaker.Make(LimitWords.Us, [near with { Limits = [], Reservation = "the lead was not zeroed" }], [], []).Reasons);
    }

    // Of a diagnosis the cause is the reason, not the whole sentence about the readings.
    [Fact]
    public void A_diagnosis_that_fails_gives_its_cause_as_the_reason()
    {
        var diagnosis = Found(Verdict.Fail, Phases.Charge) with { Check = Diagnosis.Check, Title = "Diagnosis", Subject = null, Reason = "low charge", Statement = "Superheat is high and subcooling low." };
        Assert.Equal(["Diagnosis: low charge."], OutcomeMaker.Make(LimitWords.Us, [diagnosis], [], []).Reasons);
    }

    [Fact]
    public void Dangers_stand_before_other_failures_and_each_is_said_once()
    {
        var (_, reasons, _) = OutcomeMaker.Make(LimitWords.Us, [Found(Verdict.Fail), Found(Verdict.Fail, Phases.Evidence) with { Title = "Gas", IsDanger = true }], [], []);
        Assert.Equal(["Gas (north): 1.01 ohm.", "Ground (north): 1.01 ohm."], reasons);
    }

    private static Finding Found(Verdict verdict, string phase = Phases.Electrical, string? reservation = null) =>
        new() { Check = "electrical.ground", Phase = phase, Title = "Ground", Subject = "north", Verdict = verdict, Reservation = reservation, Statement = "1.01 ohm." };
}
