using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>The leak check on the running system: how it was made, with what, and when the next is due.</summary>
internal sealed class AfterStartLeakCheck : ICheck
{
    public string Id => "refrigerant.leak-check";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var second = context.Get<SecondCheck>();
        var isTold = false;
        if (context.Job.LeakCheck is { } check)
        {
            var found = Found(context, check, second);
            isTold = second.State == SecondCheckState.ToCome && found.Verdict is Verdict.Conditional;
            yield return found;
        }

        if (!isTold && AfterRepair(context, second) is { } repaired)
            yield return repaired;
        if (context.Job.LeakCheck is { } last && NextDue(context, last) is { } next)
            yield return next;
    }

    private Finding Found(CheckContext context, LeakCheck check, SecondCheck second)
    {
        var detector = context.Get<InstrumentKit>().FirstOf(check.With);
        var sensitivity = check.Sensitivity ?? detector?.Described.Sensitivity;
        var finding = context.Finding(this).Use(RefrigerantMessages.ReadingResult, check.Result, detector?.Id).Use(RefrigerantMessages.ReadingMethod, check.Method, detector?.Id)
            .Use(RefrigerantMessages.ReadingKind, check.Kind).Use(RefrigerantMessages.ReadingCheckDate, check.Date).Use(RefrigerantMessages.ReadingSensitivity, sensitivity, detector?.Id);
        var (day, how) = (check.Date.Value, new TextValue(check.Method?.Text ?? check.Kind?.Text ?? ""));
        if (check.Result.Value == LeakResult.Leak)
            return finding.Decide(false).Say(RefrigerantMessages.LeakCheckLeak(day)).Next(this.WhenItFails()).Build();
        if (check is { Method: null, Kind: null })
            return finding.NotEvaluated(RefrigerantMessages.LeakCheckHowUnknown, RefrigerantMessages.LeakCheckHowUnknownNext, "leak check: {method: bubble solution}");
        var repaired = check.Result.Value == LeakResult.LeakRepaired;
        var isElectronic = check.Method?.Value is LeakMethod.Electronic or LeakMethod.ElectronicWithTracer;
        if (isElectronic && sensitivity is not null && context.Limits.Find(LimitIds.RefrigerantLeakCheckSensitivity) is { } limit)
        {
            // What the detector can show is no reading of the circuit: the search found a leak or none.
            TextValue finest = new(sensitivity.Text);
            finding.Decide(sensitivity.Value.Si <= limit.Most.Si, context.State(limit));
            if (finding.Passes)
            {
                finding.Say(RefrigerantMessages.LeakCheckNoneFrom(repaired ? RefrigerantMessages.LeakCheckNoneFromState.Repaired : RefrigerantMessages.LeakCheckNoneFromState.Tight, day, how, finest));
            }
            else
            {
                finding.Say(RefrigerantMessages.LeakCheckCoarse(repaired ? RefrigerantMessages.LeakCheckCoarseState.Repaired : RefrigerantMessages.LeakCheckCoarseState.Tight, day, how, finest))
                    .Next(RefrigerantMessages.LeakCheckCoarseNext);
            }
        }
        else
        {
            finding.Decide(true).Say(RefrigerantMessages.LeakCheckNone(repaired ? RefrigerantMessages.LeakCheckNoneState.Repaired : RefrigerantMessages.LeakCheckNoneState.Tight, day, how));
            if (isElectronic)
                finding.Reserve(RefrigerantMessages.LeakCheckSensitivityNotWritten).Next(RefrigerantMessages.LeakCheckSensitivityNotWrittenNext);
        }

        if (check.Kind?.Value == LeakCheckKind.Indirect || check.Method?.Value == LeakMethod.Indirect)
            finding.Reserve(RefrigerantMessages.LeakCheckIndirect).Next(RefrigerantMessages.LeakCheckIndirectNext);
        if (repaired && second.State == SecondCheckState.NotAsked)
            finding.Reserve(RefrigerantMessages.LeakCheckRepaired).Next(RefrigerantMessages.LeakCheckRepairedNext);
        // One line for the search of the day and for the one that is still to come: a repair is not proved by half of it.
        if (second.State == SecondCheckState.ToCome && finding.Passes)
            ToCome(context, second.UseIn(finding), second).Remark(second.Sentence);
        return finding.Build();
    }

    private Finding? AfterRepair(CheckContext context, SecondCheck second)
    {
        if (second.State == SecondCheckState.NotAsked)
            return null;
        var finding = second.UseIn(context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectAfterRepair))).Use(RefrigerantMessages.ReadingResult, context.Job.LeakCheck?.Result);
        switch (second.State)
        {
            case SecondCheckState.NotOwed:
                return finding.Show(context.State(second.Limit)).Information(second.Sentence!);
            case SecondCheckState.ToCome:
                return ToCome(context, finding.Decide(true, context.State(second.Limit)).Say(second.Sentence!), second).Build();
            default:
                finding.Step("t", RefrigerantMessages.LeakRecheckLatest, RefrigerantMessages.LeakRecheckLatestFormula, second.Span!, Text(second.Latest), second.Limit.Source).Decide(second.IsInTime, context.State(second.Limit));
                if (second.Running is { } running)
                    finding.Show(context.State(running));
                if (finding.Passes && second.AreHoursUnknown)
                    finding.Reserve(RefrigerantMessages.LeakRecheckHoursUnknown).Next(RefrigerantMessages.LeakRecheckHoursUnknownNext, "running for: 24 h");
                return finding.Conclude(second.Sentence!, second.Sentence!, RefrigerantMessages.LeakRecheckLateNext);
        }
    }

    private static FindingBuilder ToCome(CheckContext context, FindingBuilder finding, SecondCheck second)
    {
        if (second.Running is { } running)
            finding.Show(context.State(running));
        return finding.Reserve(second.Why!).Next(second.Next!);
    }

    private Finding? NextDue(CheckContext context, LeakCheck check)
    {
        if (context.Limits.Find(LimitIds.RefrigerantLeakCheckInterval) is not { } limit || context.Get<EuropeanDuties>() is not { Plan: { } plan } duties)
            return null;
        var finding = context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectNextCheck)).Use(RefrigerantMessages.ReadingCheckDate, check.Date).Use(RefrigerantMessages.ReadingNextDue, check.NextDue);
        duties.UseIn(finding);
        if (plan.Months is not { } months)
            return finding.Information(RefrigerantMessages.LeakCheckNotPrescribed(plan.Because), RefrigerantMessages.LeakCheckBelowFirst);
        var due = check.Date.Value.AddMonths(months);
        finding.Step("due", RefrigerantMessages.LeakCheckStepNext, RefrigerantMessages.LeakCheckStepFormula, RefrigerantMessages.LeakCheckStepNumbers(check.Date.Value, months), Text(due), duties.Citation);
        if (check.NextDue is not { } written)
            return finding.Show(context.State(limit)).Information(RefrigerantMessages.LeakCheckNextDue(due, plan.Because), RefrigerantMessages.LeakCheckNextNotWritten);
        finding.Decide(written.Value <= due, context.State(limit));
        return finding.Conclude(
            written.Value == due ? RefrigerantMessages.LeakCheckNextLastDay(written.Value) : RefrigerantMessages.LeakCheckNextInTime(written.Value, due),
            RefrigerantMessages.LeakCheckNextLate(written.Value, due, plan.Because),
            RefrigerantMessages.LeakCheckNextLateNext);
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>The leak rate since refrigerant was last added, scaled to a year.</summary>
internal sealed class AnnualLeakRateCheck : ICheck
{
    public string Id => "refrigerant.leak-rate";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var work = context.Job.Identity.Work.Value;
        var charging = context.Job.Charging;
        if (charging is null || work is WorkKind.NewInstallation or WorkKind.RefrigerantChange or WorkKind.Decommissioning)
            yield break;
        var limit = context.Limits.Find(LimitIds.RefrigerantLeakRateTrigger);
        if (charging.PreviousAddition is null && limit is null)
            yield break;
        var finding = context.Finding(this).Use(RefrigerantMessages.ReadingPreviousAddition, charging.PreviousAddition).Use(ReadingsMessages.DateOfJob, context.Job.Identity.Date).Use(ReadingsMessages.Work, context.Job.Identity.Work);
        var ledger = context.Get<RefrigerantLedger>();
        if (ledger.Net is not { } added)
        {
            if (!ledger.Movements.IsEmpty || charging.PreviousAddition is not null)
                yield return finding.NotEvaluated(RefrigerantMessages.LeakRateMassNotWritten, RefrigerantMessages.LeakRateMassNotWrittenNext);
            yield break;
        }

        foreach (var movement in ledger.Movements)
            movement.Mass!.UseIn(finding);
        yield return Judge(context, finding, limit, added);
    }

    private Finding Judge(CheckContext context, FindingBuilder finding, Limits.Limit? limit, Uncertain added)
    {
        var present = context.Present;
        var charging = context.Job.Charging!;
        if (added.Value <= 0)
            return finding.Information(RefrigerantMessages.LeakRateNoneAdded, RefrigerantMessages.LeakRateNoneAddedWhy);
        if (charging.PreviousAddition is not { } previous)
            return finding.NotEvaluated(RefrigerantMessages.LeakRateNoAddition, RefrigerantMessages.LeakRateNoAdditionNext, "charging: {previous addition: 2025-09-30}");
        if (context.Get<CircuitCharge>().Full is not { } full)
            return finding.NotEvaluated(RefrigerantMessages.FullChargeNotWritten, RefrigerantMessages.FullChargeNotWrittenNext);
        full.UseIn(finding);
        var days = context.Job.Identity.Date.Value.DayNumber - previous.Value.DayNumber;
        if (days < 1)
            return finding.NotEvaluated(RefrigerantMessages.LeakRateNotBefore, RefrigerantMessages.LeakRateNotBeforeNext);
        var rate = Uncertain.Apply((a, f) => LeakRepair.AnnualisedRate(a, f, days), added, full.Value);
        finding.Step(
            "r", RefrigerantMessages.LeakRateStep, LeakRepair.RateFormula,
            string.Create(CultureInfo.InvariantCulture, $"{present.Text(added.Value, DisplayKind.Mass)} / {present.Text(full.Value.Value, DisplayKind.Mass)} × {LeakRepair.DaysInYear} / {Math.Min(days, LeakRepair.DaysInYear)} × 100 %"),
            present.Text(rate, DisplayKind.Percentage), LeakRepair.RateSource);
        var (mass, share) = (present.InMessage(added.Value, DisplayKind.Mass), present.InMessage(rate.Value, DisplayKind.Percentage));
        var said = days > LeakRepair.DaysInYear ? RefrigerantMessages.LeakRateSaidLonger(mass, days, share) : RefrigerantMessages.LeakRateSaid(mass, days, share);
        var rule = context.Get<UnitedStatesRule>();
        if (limit is null || rule.Rule is not { } applies || UnitedStatesRule.Citation(applies) is not { } citation)
            return finding.Measure(rate, DisplayKind.Percentage).Information(RefrigerantMessages.LeakRateTold(said), limit is null ? RefrigerantMessages.LeakRateNoTrigger : RefrigerantMessages.LeakRateNoRule);
        finding.Use(CommonMessages.ReadingSystem, context.Job.Equipment.System).Use(RefrigerantMessages.ReadingApplication, context.Job.Equipment.Application).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant)
            .Judge(rate, DisplayKind.Percentage, context.State(limit));
        return finding.Conclude(
            RefrigerantMessages.LeakRateBelow(said, new(citation)),
            RefrigerantMessages.LeakRateAbove(said, new(citation)),
            this.WhenItFails());
    }
}

/// <summary>Under which leak-repair rule of the United States the circuit falls.</summary>
internal sealed class UnitedStatesRule : IAnalysis<UnitedStatesRule>
{
    private UnitedStatesRule(CheckContext context)
    {
        var equipment = context.Job.Equipment;
        IsOzoneDepleting = context.Get<CircuitRefrigerant>().Info is { } info && GasFamilies.DepletesOzone(info);
        IsComfort = (equipment.Application?.Value ?? (equipment.System.Value == SystemKind.Refrigeration ? null : Application.AC)) == Application.AC;
        IsExemptSubsector = IsComfort && equipment.System.Value != SystemKind.Refrigeration;
        Potential = context.Get<CircuitRefrigerant>().Info?.GwpAr4?.Value;
        var full = context.Get<CircuitCharge>().Full;
        Rule = full is null || Potential is not { } gwp
            ? null
            : LeakRepair.RuleFor(full.Value.Value, IsOzoneDepleting, gwp, context.Job.Identity.Date.Value, IsExemptSubsector);
    }

    /// <summary>Whether the refrigerant or a part of it depletes ozone.</summary>
    public bool IsOzoneDepleting { get; }

    /// <summary>Whether the circuit cools people and not goods.</summary>
    public bool IsComfort { get; }

    /// <summary>Whether it belongs to the residential and light-commercial air-conditioning and heat-pump subsector.</summary>
    public bool IsExemptSubsector { get; }

    /// <summary>Warming potential as the rules count it (AR4); null when it is not known here.</summary>
    public double? Potential { get; }

    /// <summary>The rule; null when full charge or potential is not known.</summary>
    public LeakRepairRule? Rule { get; }

    /// <inheritdoc/>
    public static UnitedStatesRule Create(CheckContext context) => new(context);

    /// <summary>The rule as it is cited; null for none.</summary>
    public static string? Citation(LeakRepairRule rule) => rule switch
    {
        LeakRepairRule.Section82157 => "40 CFR 82.157",
        LeakRepairRule.Section84106 => "40 CFR 84.106",
        _ => null,
    };
}
